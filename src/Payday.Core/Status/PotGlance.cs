using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.Status;

/// <summary>A pot at a glance: what it has, and of how much.</summary>
/// <param name="Pot">The pot.</param>
/// <param name="Has">What it has, wherever it is; below zero where it owes.</param>
/// <param name="Whole">
/// What it is held against, zero or more: the target of a sinking pot, all steps of a ladder, the level of a reserve; of spending what the last
/// payday that put something in put in, or what it has where that is more; zero where none has yet, so that it is held against nothing.
/// </param>
public sealed record PotGlance(Pot Pot, Money Has, Money Whole)
{
    // A payday may put nothing in a pot, where another comes a few days later.
    private const int LookedBack = 6;

    /// <summary>Whether there is something to reach.</summary>
    public bool HasTarget => Pot.Kind is not PotKind.Spending;

    /// <summary>How much of the whole is there, in hundredths, rounded down; 0 to 100.</summary>
    public int Percent => Has >= Whole ? 100 : Has.IsPositive ? (int)((Int128)Has.MinorUnits * 100 / Whole.MinorUnits) : 0;

    /// <summary>All pots of a book, in the household's order.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">The day on which it is looked at: targets may change from a date on.</param>
    public static ImmutableArray<PotGlance> Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        Dictionary<PotId, Money> filled = Filled(book);
        Money nothing = Money.Zero(book.Household.Currency);
        return
        [
            .. book.Household.Pots.Select(pot =>
            {
                Money has = PotMoney.HasNow(book.Ledger.Balances, pot.Id);
                return new PotGlance(pot, has, pot.Kind switch
                {
                    PotKind.Ladder ladder => LadderSteps.SumOf(ladder, ladder.Steps),
                    PotKind.Sinking or PotKind.Reserve => PotTarget.Of(book, pot, today)!.Value,
                    _ => filled.TryGetValue(pot.Id, out Money fill) ? Money.Max(has.ClampToZero(), fill) : nothing,
                });
            }),
        ];
    }

    // By pot what the last of the latest paydays that put something in put in; a pot that none of them filled isn't there.
    private static Dictionary<PotId, Money> Filled(Book book)
    {
        var filled = new Dictionary<PotId, Money>();
        foreach (ClosedPayday closed in book.Closed.TakeLast(LookedBack).Reverse())
        {
            foreach ((PotId pot, Money fill) in Fills(book, closed).Where(fill => fill.Value.IsPositive))
            {
                filled.TryAdd(pot, fill);
            }
        }

        return filled;
    }

    private static Dictionary<PotId, Money> Fills(Book book, ClosedPayday closed)
    {
        var fills = new Dictionary<PotId, Money>();
        Money nothing = Money.Zero(book.Household.Currency);
        foreach (Movement movement in book.Ledger.Between(closed.FirstMovement, closed.LastMovement).Where(book.Ledger.Stands))
        {
            foreach ((PotId? pot, Money change) in new[] { (Of(movement.To), movement.Amount), (Of(movement.From), -movement.Amount) })
            {
                // From one place of a pot to another is nothing new, and what a loose note pays goes out of the account again.
                if (pot is { } its)
                {
                    fills[its] = fills.GetValueOrDefault(its, nothing) + change;
                }
            }
        }

        return fills;
    }

    private static PotId? Of(LedgerEnd end) => end is LedgerEnd.At { Purpose: { Kind: PurposeKind.Pot or PurposeKind.KeptBack or PurposeKind.Wallet, PotId: { } pot } } ? pot : null;
}
