using System.Collections.Immutable;
using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>What a person calls the purposes that money is moved between or comes in for.</summary>
internal static class PurposeNames
{
    /// <summary>E.g. <c>Food</c>, <c>Buffer</c>, <c>Food, not in notes</c>.</summary>
    public static string Of(Household household, LedgerEnd end) => end switch
    {
        LedgerEnd.At { Purpose.Kind: PurposeKind.KeptBack } => $"{LedgerEnds.NameIn(household, end)}, not in notes",
        LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace } => "Left to place",
        _ when end == MoveEnds.Loose => "Loose notes",
        _ => LedgerEnds.NameIn(household, end) ?? (end == MoveEnds.Buffer ? "Buffer" : EndText.Of(household, end)),
    };

    /// <summary>What sort of thing it is, in a word or three.</summary>
    public static string Sort(LedgerEnd end) => end switch
    {
        LedgerEnd.Owed => "debt",
        LedgerEnd.At { Purpose.Kind: PurposeKind.SetAside } => "bill, in the account",
        LedgerEnd.At { Purpose.Kind: PurposeKind.Pot, Place: Place.Cash } => "pot, in cash",
        LedgerEnd.At { Purpose.Kind: PurposeKind.Pot } => "pot, in the account",
        LedgerEnd.At { Place: Place.Cash } => "in cash",
        _ => "in the account",
    };

    /// <summary>The one of some ends that a text names, whatever the case, or by its id.</summary>
    public static Result<LedgerEnd> Find(Book book, ImmutableArray<LedgerEnd> ends, string text)
    {
        string name = text.Trim();
        LedgerEnd? found = ends.FirstOrDefault(end => string.Equals(Of(book.Household, end), name, StringComparison.OrdinalIgnoreCase))
            ?? ends.FirstOrDefault(end => Id(end) == name)
            ?? ends.FirstOrDefault(end => IsKeptBack(end) && string.Equals($"{LedgerEnds.NameIn(book.Household, end)}, kept back", name, StringComparison.OrdinalIgnoreCase))
            ?? (string.Equals(name, "loose", StringComparison.OrdinalIgnoreCase) && ends.Contains(MoveEnds.Loose) ? MoveEnds.Loose : null)
            ?? (string.Equals(name, "to place", StringComparison.OrdinalIgnoreCase) && ends.Contains(EntryEnds.ToPlace) ? EntryEnds.ToPlace : null);
        return found is not null
            ? Result.Of(found)
            : Result.Refused<LedgerEnd>(new ArgumentFault.NoSuchPurpose(name, [.. ends.Where(end => !IsKeptBack(end)).Select(end => Of(book.Household, end))]));
    }

    // What isn't in notes had another name once, and scripts may still use it.
    private static bool IsKeptBack(LedgerEnd end) => end is LedgerEnd.At { Purpose.Kind: PurposeKind.KeptBack };

    private static string Id(LedgerEnd end) => end switch
    {
        LedgerEnd.Owed owed => owed.DebtId.Text,
        LedgerEnd.At { Purpose: { Kind: PurposeKind.Pot, PotId: { } pot } } => pot.Text,
        LedgerEnd.At { Purpose.BillId: { } bill } => bill.Text,
        _ => "",
    };
}
