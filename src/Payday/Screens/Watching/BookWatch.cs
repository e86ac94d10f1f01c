using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Books;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Store.Folders;
using Terminal.Gui.Input;

namespace Payday.Screens.Watching;

/// <summary>Screens that only look, while another process has the data folder open.</summary>
internal sealed class BookWatch
{
    // More would leave a small screen no room for what is looked at.
    private const int MostNamed = 3;

    private readonly IWatchDoor door;
    private readonly Book first;
    private FolderHolder? holder;
    private FolderGlance read;
    private FolderGlance now;
    private bool isOver;

    /// <param name="door">The outside.</param>
    /// <param name="first">What was seen first.</param>
    /// <param name="today">Says the date.</param>
    public BookWatch(IWatchDoor door, Seen first, Func<LocalDate> today)
    {
        this.door = door;
        this.first = first.Book;
        holder = first.Holder;
        read = now = door.Glance(null);
        Session = BookSession.ReadOnly(first.Book, today, door.Folder);
    }

    /// <summary>The book that is looked at.</summary>
    public BookSession Session { get; }

    /// <summary>What is to be read on every screen: who has the folder, that nothing can be changed, and what is new; empty once it is open here.</summary>
    public string Standing => isOver ? ""
        : holder is null ? "Only looking, no changes. Nobody else has it open: Ctrl+R at home opens it."
        : HasMore ? $"Only looking, no changes: {Who(holder)} has it open. More is stored since; Ctrl+R at home shows it."
        : $"Only looking, no changes: {Who(holder)} has it open.";

    /// <summary>What was done since this look began, a line each.</summary>
    public ImmutableArray<string> News => WrittenSince.Lines(first, Session.Book);

    private bool HasMore => now.Journal != read.Journal;

    /// <summary>The key that reads anew.</summary>
    public Binding ReadAgain(Screen on) =>
        new(Key.R.WithCtrl, "Ctrl+R", "read again", "Read what is stored now; where nobody else has it open any more, offer to open it for changes.", () => Read(on));

    /// <summary>Looks whether the folder is free by now, or more is stored in it; to be asked every few seconds.</summary>
    /// <returns>Whether <see cref="Standing"/> says something else now.</returns>
    public bool Glance()
    {
        if (isOver)
        {
            return false;
        }

        string before = Standing;
        now = door.Glance(now);
        holder = now.IsFree ? null : now.Holder;
        return Standing != before;
    }

    /// <summary>From here on the folder is open for changes.</summary>
    public BookSession Open()
    {
        BookSession session = door.Open();
        isOver = true;
        return session;
    }

    /// <summary>Goes on looking at a folder that nobody has open.</summary>
    public void GiveBack() => door.GiveBack();

    // The folder's path, which a command would name, has no room on a line of every screen.
    private static string Who(FolderHolder holder) => holder == FolderHolder.Unknown ? "another Payday" : holder.ToString().Replace(",", "", StringComparison.Ordinal);

    private Way Read(Screen on)
    {
        Book before = Session.Book;
        Seen seen = door.Peek();
        Session.See(seen.Book);
        holder = seen.Holder;
        read = now = door.Glance(now);
        if (holder is null)
        {
            return new Way.To(new OpenScreen(this));
        }

        int more = seen.Book.Ledger.Movements.Count - before.Ledger.Movements.Count;
        string[] lines = [.. WrittenSince.Lines(before, seen.Book)];
        string rest = lines.Length > MostNamed ? $" And {lines.Length - MostNamed} more; l shows the ledger." : "";
        on.Message = $"It is read again: {(more > 0 ? "new ledger line".ToQuantity(more) : "no new ledger line")}.{string.Concat(lines.Take(MostNamed).Select(line => $" {line}."))}{rest}";
        return Way.Stay;
    }
}
