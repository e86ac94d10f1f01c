using NodaTime;
using Payday.Core.Books;
using Payday.Screens.Watching;
using Payday.Screens.Shell;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Tests.Screens.Looks;

/// <summary>A folder that is looked at, without another process.</summary>
internal sealed class OneLook(Func<Book> book) : IWatchDoor
{
    public FolderHolder? Holder { get; set; } = new(4711, new LocalDateTime(2026, 3, 2, 8, 15));

    public StoreFolder? Folder => null;

    public Seen Peek() => new(book(), Holder);

    /// <summary>How long the journal is, as if something was stored.</summary>
    public long Stored { get; set; }

    public FolderGlance Glance(FolderGlance? before) => new(Holder is null, Holder ?? FolderHolder.Unknown, new FileFacts(FileKind.File, default, null, Stored));

    public BookSession Open() => throw new InvalidOperationException("Nothing is opened here.");

    public void GiveBack()
    {
    }
}
