using NodaTime;
using Payday.Core.Books;
using Payday.Core.Faults;

namespace Payday.Core.Undo;

/// <summary>Undoing one of the records of a kind, each known by its number and with movements of its own: all is as if it had never been entered.</summary>
/// <typeparam name="T">The kind of record.</typeparam>
/// <param name="reason">What the reverses of its movements say.</param>
internal abstract class RecordUndo<T>(string reason)
{
    /// <summary>Undoes one.</summary>
    /// <param name="book">The book.</param>
    /// <param name="number">Its number.</param>
    /// <param name="date">The day on which it is undone.</param>
    /// <returns>The book afterwards; or why it can't be undone.</returns>
    public Result<Book> Undo(Book book, long number, LocalDate date) => InTheWay(book, number) is { } obstacle
        ? Result.Refused<Book>(obstacle)
        : Taking(book, All(book.Weeks)[(int)number - 1]).Done(date, reason, weeks => Undone(weeks, All(weeks)[(int)number - 1]));

    /// <summary>What is in the way of undoing one; null for nothing.</summary>
    public Obstacle? InTheWay(Book book, long number)
    {
        ArgumentNullException.ThrowIfNull(book);
        if (number < 1 || number > All(book.Weeks).Count)
        {
            return NoSuch(number);
        }

        T one = All(book.Weeks)[(int)number - 1];
        return Before(book, one) ?? Taking(book, one).InTheWay();
    }

    /// <summary>All of its kind; the one at index i has number i + 1.</summary>
    protected abstract IReadOnlyList<T> All(WeekRecords weeks);

    /// <summary>The records with one undone, and what was entered as one with it.</summary>
    protected abstract WeekRecords Undone(WeekRecords weeks, T one);

    /// <summary>That there is none of a number.</summary>
    protected abstract Obstacle NoSuch(long number);

    /// <summary>What is in the way before its movements are looked at: that it is undone already, or what came of it since; null for nothing.</summary>
    protected abstract Obstacle? Before(Book book, T one);

    /// <summary>All that it wrote and took up.</summary>
    protected abstract TakingBack Taking(Book book, T one);
}
