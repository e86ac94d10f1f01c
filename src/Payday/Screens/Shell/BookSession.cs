using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Store;

namespace Payday.Screens.Shell;

/// <summary>The book that the screens work on: every change is stored as it is made.</summary>
internal sealed class BookSession(BookStore store, Book book, NodaTime.LocalDate today)
{
    // A backup that takes longer, of a long life or on a slow disk, is told of at the end.
    private static readonly TimeSpan PatienceForBackups = TimeSpan.FromMilliseconds(200);

    private int told;

    /// <summary>The book as it stands.</summary>
    public Book Book { get; private set; } = book;

    /// <summary>What the store mended or could not do since this was last asked, e.g. a backup whose disk is not there; empty for nothing.</summary>
    public string News()
    {
        store.FinishBackups(PatienceForBackups);
        string news = string.Join(' ', store.Notices.Skip(told));
        told = store.Notices.Length;
        return news;
    }

    /// <summary>The date.</summary>
    public NodaTime.LocalDate Today { get; } = today;

    /// <summary>How numbers are written.</summary>
    public NumberStyle Style => Book.Household.Settings.Numbers;

    /// <summary>Keeps what was decided so far.</summary>
    public void Keep(RoutineDraft draft)
    {
        store.Save(new BookChange { Draft = draft });
        Book = Book with { Draft = draft };
    }

    /// <summary>Puts a household in the place of this one.</summary>
    /// <returns>Why it can't be done, one sentence; or null when it is stored.</returns>
    public string? Change(Household next)
    {
        HouseholdChange change = HouseholdChange.Of(Book, next);
        if (!change.Refusals.IsEmpty)
        {
            return change.Refusals[0];
        }

        store.Save(BookChange.Of(change));
        Book = change.Book;
        return null;
    }

    /// <summary>Stores a closed payday.</summary>
    public void Close(Closing closing)
    {
        store.Save(BookChange.Of(closing));
        Book = closing.Book;
    }

    /// <summary>Takes the last closed payday up again.</summary>
    public void Reopen(Reopening reopening)
    {
        store.Save(BookChange.Of(reopening));
        Book = reopening.Book;
    }

    /// <summary>Stores what happened between paydays.</summary>
    /// <param name="after">The book with it; see <see cref="BookChange.Between"/>.</param>
    public void Take(Book after)
    {
        store.Save(BookChange.Between(Book, after));
        Book = after;
    }

    /// <summary>Undoes a movement.</summary>
    public void Undo(Undoing undoing)
    {
        store.Save(BookChange.Of(undoing));
        Book = undoing.Book;
    }
}
