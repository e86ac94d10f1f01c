using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>An account entry that was made, in words.</summary>
internal static class EntryText
{
    /// <summary>In one line.</summary>
    public static string Of(Book book, AccountEntry entry)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        string what = entry.What.Length == 0 ? "" : ", " + entry.What;
        if (entry.Counted is { } counted)
        {
            string difference = entry.Amount.IsZero ? "" : $", {entry.Amount.ToString(style)}";
            return $"Loose notes counted: {NoteText.Listed(counted, book.Household.Currency, style)}{difference}{what}";
        }

        return $"{entry.Amount.ToString(style)}, {Kind(entry)}, {PurposeNames.Of(book.Household, entry.For)}{what}";
    }

    /// <summary>What it is.</summary>
    public static string Kind(AccountEntry entry) => entry switch
    {
        { Cheque: { } number } => $"cheque {number}",
        { Kind: EntryKind.Loss, Amount.IsNegative: false } => "found",
        _ => EntryKindText.Of(entry.Kind),
    };
}
