using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Store.HouseholdFiles;

namespace Payday.Reports;

/// <summary>What somebody else did in a book, between two looks at it.</summary>
internal static class WrittenSince
{
    /// <summary>
    /// What was done, a line each without a full stop, the earliest first: as the ledger names it, with its amount; then what no
    /// ledger line tells. Empty for nothing.
    /// </summary>
    /// <param name="before">The book at the first look.</param>
    /// <param name="now">The same book at the second.</param>
    public static ImmutableArray<string> Lines(Book before, Book now) =>
    [
        .. now.Ledger.Movements.Count == before.Ledger.Movements.Count ? [] : LedgerGroups.Of(now).Where(group => group.Movements[^1].Number > before.Ledger.Movements.Count).Select(group => Line(now, group)),
        .. Named(now.Weeks.Reconciliations.Length > before.Weeks.Reconciliations.Length, "The account was compared with the bank"),
        .. Named(HouseholdFile.Write(now.Household) != HouseholdFile.Write(before.Household), "The household was changed: settings, pay, bills, debts or pots"),
        .. Named(before.Draft is null && now.Draft is not null, "A payday was begun"),
    ];

    private static string Line(Book book, LedgerGroup group)
    {
        string text = LedgerGroupText.Of(book, group);
        return LedgerGroupText.Amount(book, group) is { } amount ? $"{text}, {amount.ToString(book.Household.Settings.Numbers)}" : text;
    }

    private static string[] Named(bool happened, string line) => happened ? [line] : [];
}
