using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Status;

/// <summary>A pot at a glance: what it has, and of how much.</summary>
/// <param name="Pot">The pot.</param>
/// <param name="Has">What it has, wherever it is; below zero where it owes.</param>
/// <param name="Whole">
/// What it is held against, zero or more: the target of a sinking pot, all steps of a ladder, the level of a reserve; of spending what the last
/// closed payday put in, or what it has where that is more.
/// </param>
public sealed record PotGlance(Pot Pot, Money Has, Money Whole)
{
    /// <summary>Whether there is something to reach.</summary>
    public bool HasTarget => Pot.Kind is not PotKind.Spending;

    /// <summary>How much of the whole is there, in hundredths, rounded down; 0 to 100.</summary>
    public int Percent => Has >= Whole ? 100 : Has.IsPositive ? (int)((Int128)Has.MinorUnits * 100 / Whole.MinorUnits) : 0;

    /// <summary>All pots of a book, in the household's order.</summary>
    public static ImmutableArray<PotGlance> Of(Book book)
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
                    PotKind.Sinking sinking => sinking.Target,
                    PotKind.Ladder ladder => LadderSteps.SumOf(ladder, ladder.Steps),
                    PotKind.Reserve reserve => reserve.Level,
                    _ => Money.Max(has.ClampToZero(), filled.GetValueOrDefault(pot.Id, nothing)),
                });
            }),
        ];
    }

    private static Dictionary<PotId, Money> Filled(Book book)
    {
        var filled = new Dictionary<PotId, Money>();
        if (book.LastClosed is { } closed)
        {
            foreach (Movement movement in book.Ledger.Movements.Skip((int)closed.FirstMovement - 1).Take((int)(closed.LastMovement - closed.FirstMovement + 1)).Where(book.Ledger.Stands))
            {
                if (movement.To is LedgerEnd.At { Purpose: { Kind: PurposeKind.Pot or PurposeKind.KeptBack, PotId: { } pot } } && !IsOf(movement.From, pot))
                {
                    filled[pot] = filled.TryGetValue(pot, out Money before) ? before + movement.Amount : movement.Amount;
                }
            }
        }

        return filled;
    }

    private static bool IsOf(LedgerEnd end, PotId pot) => end is LedgerEnd.At { Purpose.PotId: { } its } && its == pot;
}
