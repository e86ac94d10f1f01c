using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;

namespace Payday.Reports;

/// <summary>What places and purposes have after something, beside what they have now.</summary>
internal static class BalanceChanges
{
    /// <summary>A sentence for each place that changes, then for each purpose.</summary>
    /// <param name="book">The book.</param>
    /// <param name="after">The book afterwards.</param>
    /// <param name="ends">The purposes and debts that may change; each is told of once.</param>
    public static IEnumerable<string> Of(Book book, Book after, IEnumerable<LedgerEnd> ends)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        foreach (Place place in new[] { Place.Account, Place.Cash })
        {
            (Money before, Money then) = (book.Ledger.Balances.In(place), after.Ledger.Balances.In(place));
            if (before != then)
            {
                yield return $"{(place == Place.Account ? "Account" : "Cash")} {then.ToString(style)} (now {before.ToString(style)}).";
            }
        }

        foreach (LedgerEnd end in ends.Distinct())
        {
            (Money before, Money then) = (MoveEnds.Has(book, end), MoveEnds.Has(after, end));
            if (before != then)
            {
                yield return $"{Name(book.Household, end)} {then.ToString(style)} (now {before.ToString(style)}{(end is LedgerEnd.Owed ? ", owed" : "")}).";
            }
        }
    }

    // A debt and what is set aside for it have one name elsewhere; here the two stand under each other.
    private static string Name(Household household, LedgerEnd end) => end is LedgerEnd.At { Purpose: { Kind: PurposeKind.ForDebt or PurposeKind.ForCard } purpose }
        ? Capital(EndText.Of(household, purpose))
        : PurposeNames.Of(household, end);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
