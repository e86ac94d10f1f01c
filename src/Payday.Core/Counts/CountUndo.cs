using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Undo;

namespace Payday.Core.Counts;

/// <summary>Taking back counts, so that they can be made again.</summary>
public static class CountUndo
{
    /// <summary>The counts that were confirmed last, all together; empty where none stands.</summary>
    public static ImmutableArray<WeekCount> Last(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Weeks.StandingCounts.LastOrDefault() is { } last ? [.. book.Weeks.StandingCounts.Where(count => count.Together == last.Together)] : [];
    }

    /// <summary>What was entered in a count, as it can be entered again.</summary>
    public static CountEntry EntryOf(WeekCount count)
    {
        ArgumentNullException.ThrowIfNull(count);
        return new CountEntry(count.Left)
        {
            Notes = count.Notes,
            Missing = count.Difference.ClampToZero(),
            IsFind = count.Difference.IsNegative,
            DifferenceName = count.DifferenceName,
            Then = new CountThen(count.MovesOnTo),
        };
    }

    /// <summary>Takes counts back: all is as if they had not been confirmed. What was entered is a draft again; not so what was counted for another day than the draft that is begun.</summary>
    /// <param name="book">The book.</param>
    /// <param name="counts">Counts that stand, at least one, each the last of its pot.</param>
    /// <param name="date">The day on which they are taken back.</param>
    /// <returns>The book afterwards; or why it can't be.</returns>
    public static Result<Book> Of(Book book, ImmutableArray<WeekCount> counts, LocalDate date) => InTheWay(book, counts) is { } obstacle
        ? Result.Refused<Book>(obstacle)
        : Taking(book, counts).Done(date, "count taken back", weeks => weeks with
        {
            Counts = counts.Aggregate(weeks.Counts, (all, count) => all.Put(all[(int)count.Number - 1] with { Undone = true })),
            Draft = Begun(weeks.Draft ?? new CountDraft(counts.Max(count => count.Date)), counts),
        });

    /// <summary>What is in the way of taking counts back; null for nothing.</summary>
    public static Obstacle? InTheWay(Book book, ImmutableArray<WeekCount> counts)
    {
        ArgumentNullException.ThrowIfNull(book);
        foreach (WeekCount count in counts)
        {
            if (book.Weeks.Settled.FirstOrDefault(settled => settled.Count == count.Number) is { } cleared)
            {
                return new Obstacle.DifferenceCleared(BookEntry.Of(book, cleared));
            }

            if (ReturnUndo.Settled(book, new OwedKey(OwedKind.MovesOn, count.Number), BookEntry.Of(book, count)) is { } settled)
            {
                return settled;
            }
        }

        return Taking(book, counts).InTheWay();
    }

    private static CountDraft Begun(CountDraft begun, ImmutableArray<WeekCount> counts) =>
        counts.Where(count => count.Date == begun.Date).Aggregate(begun, (draft, count) => draft.With(count.PotId, EntryOf(count)));

    private static TakingBack Taking(Book book, ImmutableArray<WeekCount> counts)
    {
        var taking = new TakingBack(book, BookEntry.Of(book, counts[0]), counts.Select(count => count.Number));
        foreach (WeekCount count in counts)
        {
            taking.AddRange(count.FirstMovement, count.LastMovement);
            if (count.Move is { } move)
            {
                taking.Add(move);
            }

            taking.AddTakenUp(count.PotId, count.TakenUp, count.FirstMovement);
        }

        return taking;
    }
}
