using Humanizer;
using NodaTime;
using Payday.Screens.Shell;
using Payday.Store.Folders;
using Terminal.Gui.Input;

namespace Payday.Screens.Watching;

/// <summary>Screens that only look, while another process has the data folder open.</summary>
internal sealed class BookWatch
{
    private readonly IWatchDoor door;
    private FolderHolder? holder;
    private bool isOver;

    /// <param name="door">The outside.</param>
    /// <param name="first">What was seen first.</param>
    /// <param name="today">Says the date.</param>
    public BookWatch(IWatchDoor door, Seen first, Func<LocalDate> today)
    {
        this.door = door;
        holder = first.Holder;
        Session = BookSession.ReadOnly(first.Book, today, door.Folder);
    }

    /// <summary>The book that is looked at.</summary>
    public BookSession Session { get; }

    /// <summary>What is to be read on every screen: who has the folder, and that nothing can be changed; empty once it is open here.</summary>
    public string Standing => isOver ? ""
        : holder is null ? "Only looking, no changes. Nobody else has it open any more."
        : $"Only looking, no changes: {Who(holder)} has it open.";

    /// <summary>The key that reads anew.</summary>
    public Binding ReadAgain(Screen on) =>
        new(Key.R.WithCtrl, "Ctrl+R", "read again", "Read what is stored now; where nobody else has it open any more, offer to open it for changes.", () => Read(on));

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
        int before = Session.Book.Ledger.Movements.Count;
        Seen seen = door.Peek();
        Session.See(seen.Book);
        holder = seen.Holder;
        if (holder is null)
        {
            return new Way.To(new OpenScreen(this));
        }

        int more = Session.Book.Ledger.Movements.Count - before;
        on.Message = more > 0 ? $"It is read again: {"new ledger line".ToQuantity(more)}." : "It is read again: no new ledger line.";
        return Way.Stay;
    }
}
