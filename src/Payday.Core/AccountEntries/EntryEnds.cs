using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Moves;

namespace Payday.Core.AccountEntries;

/// <summary>What money that comes in or goes out can be for.</summary>
public static class EntryEnds
{
    /// <summary>What is there to be placed by the next payday.</summary>
    public static LedgerEnd ToPlace { get; } = LedgerEnd.InAccount(Purpose.LeftToPlace);

    /// <summary>What it can be for: what is left to place, pots, bills, debts, the buffer and the loose notes.</summary>
    public static ImmutableArray<LedgerEnd> Of(Book book) => [ToPlace, .. MoveEnds.To(book)];

    /// <summary>What an entry is that says no more than its way and what it is for.</summary>
    /// <param name="end">What it is for.</param>
    /// <param name="comesIn">Whether it came in.</param>
    /// <param name="isCash">Whether it is cash.</param>
    public static EntryKind UsualKind(LedgerEnd end, bool comesIn, bool isCash) => (end, comesIn) switch
    {
        (LedgerEnd.Owed, true) => EntryKind.Borrowing,
        (LedgerEnd.Owed, false) => EntryKind.Fee,
        _ when isCash || end == MoveEnds.Loose => comesIn ? EntryKind.Gift : EntryKind.Loss,
        (LedgerEnd.At { Purpose.Kind: PurposeKind.Buffer }, true) => EntryKind.Interest,
        (LedgerEnd.At { Purpose.Kind: PurposeKind.Buffer }, false) => EntryKind.Fee,
        (LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace }, true) => EntryKind.Gift,
        (LedgerEnd.At { Purpose.Kind: PurposeKind.LeftToPlace }, false) => EntryKind.Fee,
        (_, true) => EntryKind.Refund,
        _ => EntryKind.Payment,
    };
}
