using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Store.Starts;
using Payday.Texts;

namespace Payday.Screens.Shell;

/// <summary>The book that the screens work on: every change is stored as it is made. A look at a book has no store, and changes nothing.</summary>
internal sealed class BookSession
{
    // A backup that takes longer, of a long life or on a slow disk, is told of at the end.
    private static readonly TimeSpan PatienceForBackups = TimeSpan.FromMilliseconds(200);

    private readonly BookStore? store;
    private readonly Func<NodaTime.LocalDate> today;
    private int told;

    /// <param name="store">Where changes are stored.</param>
    /// <param name="book">The book as it is stored.</param>
    /// <param name="today">Says the date.</param>
    public BookSession(BookStore store, Book book, Func<NodaTime.LocalDate> today)
        : this(book, today) => this.store = store;

    private BookSession(Book book, Func<NodaTime.LocalDate> today) => (Book, this.today) = (book, today);

    /// <summary>Whether the book is only looked at: another process has it open. Screens then offer no key that changes something.</summary>
    public bool IsReadOnly => store is null;

    /// <summary>Whether the book is in a folder that is thrown away at the end, as the demo household is.</summary>
    public bool IsThrownAway { get; set; }

    /// <summary>Whether questions are asked line by line: what leads elsewhere then is a command, not a key.</summary>
    public bool IsByLine { get; init; }

    /// <summary>The data folder, in which no paper is written; null where nobody said it.</summary>
    public StoreFolder? Folder
    {
        get => field ?? store?.Folder;
        init;
    }

    /// <summary>The book as it stands.</summary>
    public Book Book { get; private set; }

    /// <summary>What the store mended or could not do since this was last asked, e.g. a backup whose disk is not there; empty for nothing.</summary>
    public string News()
    {
        Store.FinishBackups(PatienceForBackups);
        string news = string.Join(' ', Store.Notices.Skip(told).Select(StoreTexts.Of));
        told = Store.Notices.Length;
        return news;
    }

    /// <summary>The date, asked for anew each time: a terminal may be left open over night.</summary>
    public NodaTime.LocalDate Today => today();

    /// <summary>The cash return as it was left, until it is confirmed; kept in the book.</summary>
    public ReturnDraft Return
    {
        get => KeptReturn.Of(Book);
        set => Take(KeptReturn.In(Book, value));
    }

    /// <summary>Notes that were counted and not taken yet, by what was counted; they are there again the next time.</summary>
    public Dictionary<string, Notes> HalfCounted { get; } = [];

    /// <summary>Items of the household that were begun and aren't complete yet, as their forms have them.</summary>
    public BegunItems BegunItems { get; set; } = BegunItems.None;

    /// <summary>The bank's files that were looked at for the household, until the program ends.</summary>
    public StartStatements Statements { get; set; } = StartStatements.None;

    /// <summary>How numbers are written.</summary>
    public NumberStyle Style => Book.Household.Settings.Numbers;

    private BookStore Store => store ?? throw new InvalidOperationException("A look at a book changes nothing.");

    /// <summary>A look at a book that another process has open.</summary>
    public static BookSession ReadOnly(Book book, Func<NodaTime.LocalDate> today, StoreFolder? folder) => new(book, today) { Folder = folder };

    /// <summary>Looks at the book as it is stored now.</summary>
    public void See(Book now) => Book = IsReadOnly ? now : throw new InvalidOperationException("Only a look reads a book anew.");

    /// <summary>Stores what an action of the person changed.</summary>
    /// <param name="after">The book after it.</param>
    public void Take(Book after)
    {
        Store.Save(Book, after);
        Book = after;
    }

    /// <summary>Puts a household in the place of this one.</summary>
    /// <param name="next">The household.</param>
    /// <param name="also">What else changes in the same step; null for nothing.</param>
    /// <returns>Why it can't be done, one sentence; or null when it is stored.</returns>
    public string? Change(Household next, Func<WeekRecords, WeekRecords>? also = null)
    {
        Result<Book> changed = HouseholdChange.Of(Book, next);
        if (!changed.Ok)
        {
            return FaultTexts.Of(changed.Fault, Style);
        }

        Take(also is null ? changed.Value : changed.Value with { Weeks = also(changed.Value.Weeks) });
        return null;
    }
}
