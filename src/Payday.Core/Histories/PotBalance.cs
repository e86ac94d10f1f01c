using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Histories;

/// <summary>What a pot had at the end of a day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Has">In the account and in cash, without cash that it owes back; zero or more.</param>
public sealed record PotBalance(LocalDate Date, Money Has)
{
    /// <summary>The ends of the ledger that hold what a pot has.</summary>
    internal static ImmutableArray<LedgerEnd> Ends(PotId potId) =>
    [
        LedgerEnd.InAccount(Purpose.Pot(potId)), LedgerEnd.InAccount(Purpose.KeptBack(potId)),
        LedgerEnd.InCash(Purpose.Pot(potId)), LedgerEnd.InCash(Purpose.Wallet(potId)), LedgerEnd.InCash(Purpose.KeptBack(potId)),
    ];

    /// <summary>A balance for each day on which money of the pot moved, what was undone left out; oldest first.</summary>
    internal static ImmutableArray<PotBalance> Of(Ledger ledger, PotId potId)
    {
        ImmutableArray<LedgerEnd> ends = Ends(potId);
        var changes = new SortedDictionary<LocalDate, Money>();
        Money nothing = Money.Zero(ledger.Balances.Currency);
        foreach (LedgerEnd end in ends)
        {
            foreach (Movement movement in ledger.Of(end))
            {
                // From one of its ends to another is nothing new.
                bool comes = movement.To == end;
                if (!ends.Contains(comes ? movement.From : movement.To))
                {
                    changes[movement.Date] = changes.GetValueOrDefault(movement.Date, nothing) + (comes ? movement.Amount : -movement.Amount);
                }
            }
        }

        Money has = nothing;
        var balances = ImmutableArray.CreateBuilder<PotBalance>(changes.Count);
        foreach ((LocalDate date, Money change) in changes)
        {
            has += change;
            balances.Add(new PotBalance(date, has));
        }

        return balances.MoveToImmutable();
    }
}
