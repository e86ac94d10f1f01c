using System.Collections.Frozen;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;

namespace Payday.Core.CashReturns;

/// <summary>What cash returns brought to the buffer because card purchases are owed back in whole notes.</summary>
public static class Roundings
{
    /// <summary>The numbers of the movements that are such a rounding.</summary>
    /// <remarks>
    /// A return settles its items one after the other, each by one movement or by two: what is owed, then the rest. The rest
    /// of a purchase is its rounding; what moves on to the buffer because a count says so is none.
    /// </remarks>
    public static IReadOnlySet<long> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.StandingReturns.SelectMany(back => Of(book.Ledger, back)).ToFrozenSet();
    }

    /// <summary>What of a cash return was rounding, and is in the buffer now; zero or more.</summary>
    /// <param name="before">The book before it.</param>
    /// <param name="after">The book with it.</param>
    public static Money Between(Book before, Book after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return Money.Sum(
            Of(after).Where(number => number > before.Ledger.Movements.Count).Select(number => after.Ledger.Movements[(int)number - 1].Amount),
            after.Household.Currency);
    }

    private static IEnumerable<long> Of(Ledger ledger, CashReturn back)
    {
        // What only changes places in cash settles nothing, nor does what a debt is paid with once the cash for it is there.
        var movements = new Queue<Movement>(Enumerable
            .Range((int)back.FirstMovement - 1, (int)(back.LastMovement - back.FirstMovement + 1))
            .Select(index => ledger.Movements[index])
            .Where(movement => movement.To is not LedgerEnd.At { Place: Place.Cash } && movement.From is not LedgerEnd.At { Purpose.Kind: PurposeKind.ForDebt }));
        foreach (SettledItem item in back.Settles)
        {
            for (Money left = item.Amount; left.IsPositive && movements.TryDequeue(out Movement? movement); left -= movement.Amount)
            {
                if (item.Item.Kind == OwedKind.Purchase && movement.To == LedgerEnd.InAccount(Purpose.Buffer))
                {
                    yield return movement.Number;
                }
            }
        }
    }
}
