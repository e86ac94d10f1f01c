using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Undo;

namespace Payday.Core.AccountEntries;

/// <summary>Undoing an account entry, or a count of the loose notes.</summary>
internal sealed class EntryUndo() : RecordUndo<AccountEntry>("entry undone")
{
    /// <inheritdoc/>
    protected override IReadOnlyList<AccountEntry> All(WeekRecords weeks) => weeks.Entries;

    /// <inheritdoc/>
    protected override WeekRecords Undone(WeekRecords weeks, AccountEntry one) => weeks with { Entries = weeks.Entries.SetItem((int)one.Number - 1, one with { Undone = true }) };

    /// <inheritdoc/>
    protected override Obstacle NoSuch(long number) => new Obstacle.NoSuchEntry(number);

    /// <inheritdoc/>
    protected override Obstacle? Before(Book book, AccountEntry one) => one.Undone ? new Obstacle.UndoneAlready(BookEntry.Of(one)) : LooseSince(book, one);

    /// <inheritdoc/>
    protected override TakingBack Taking(Book book, AccountEntry one) => TakingBack.Of(
        book, BookEntry.Of(one), (one.FirstMovement, one.LastMovement), (one.For as LedgerEnd.At)?.Purpose.PotId, one.TakenUp);

    // What the notes were taken for since rests on what they were counted to be.
    private static Obstacle.GoneOn? LooseSince(Book book, AccountEntry entry) =>
        entry.Counted is not null && book.Ledger.Of(MoveEnds.Loose).LastOrDefault(movement => movement.Number > entry.LastMovement) is { } later
            ? new Obstacle.GoneOn(BookEntry.Of(entry), BookEntry.Of(book, later.Number) ?? (later.Payday is { } payday ? new BookEntry.Payday(payday) : new BookEntry.Movement(later.Number)))
            : null;
}
