using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Ledgers;

namespace Payday.Core.Moves;

/// <summary>What a move does, before it is written.</summary>
/// <param name="Way">How the money gets there.</param>
/// <param name="Book">The book with it.</param>
/// <param name="FromBefore">What the one has.</param>
/// <param name="FromAfter">What it has then.</param>
/// <param name="ToBefore">What the other has, what is kept back for a cash pot with it; for a debt what is owed.</param>
/// <param name="ToAfter">What it has then; as before where the money is to be taken to the bank first.</param>
/// <param name="Notes">The notes that change hands; null where they aren't known, or none do.</param>
public sealed record MoveEffect(MoveWay Way, Book Book, Money FromBefore, Money FromAfter, Money ToBefore, Money ToAfter, Notes? Notes)
{
    /// <summary>What a move does; or why it can't be entered.</summary>
    public static Result<MoveEffect> Of(Book book, MoveEntry entry) => Moving.Enter(book, entry).Map(after => new MoveEffect(
        Moving.WayOf(entry),
        after,
        MoveEnds.Has(book, entry.From),
        MoveEnds.Has(after, entry.From),
        Got(book, entry.To),
        Got(after, entry.To),
        after.Weeks.Moves[^1].Notes));

    private static Money Got(Book book, LedgerEnd end) => MoveEnds.CashPot(book, end) is { } pot
        ? MoveEnds.Has(book, end) + book.Ledger.Balances[LedgerEnd.InAccount(Purpose.KeptBack(pot.Id))]
        : MoveEnds.Has(book, end);
}
