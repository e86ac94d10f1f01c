using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.Moves;

/// <summary>Undoing a move.</summary>
internal sealed class MoveUndo() : RecordUndo<Move>("move undone")
{
    /// <inheritdoc/>
    protected override IReadOnlyList<Move> All(WeekRecords weeks) => weeks.Moves;

    /// <inheritdoc/>
    protected override WeekRecords Undone(WeekRecords weeks, Move one) => weeks with { Moves = weeks.Moves.SetItem((int)one.Number - 1, one with { Undone = true }) };

    /// <inheritdoc/>
    protected override Obstacle NoSuch(long number) => new Obstacle.NoSuchMove(number);

    /// <inheritdoc/>
    protected override Obstacle? Before(Book book, Move one) => one.Undone
        ? new Obstacle.UndoneAlready(BookEntry.Of(one))
        : ReturnUndo.Settled(book, new OwedKey(OwedKind.Move, one.Number), BookEntry.Of(one));

    /// <inheritdoc/>
    protected override TakingBack Taking(Book book, Move one) => TakingBack.Of(
        book, BookEntry.Of(one), (one.FirstMovement, one.LastMovement), (one.From as LedgerEnd.At)?.Purpose.PotId, one.TakenUp);
}
