using NodaTime;
using Payday.Screens.Watching;
using Payday.Screens.Shell;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Commands;

/// <summary>A data folder that another process has open, looked at until it is free.</summary>
internal sealed class WatchFolder(StoreFolder folder, Func<LocalDate> today) : IWatchDoor, IDisposable
{
    private BookStore? held;

    /// <summary>Looks at a folder that somebody has, or null where no household is stored in it yet.</summary>
    public static Seen? First(StoreFolder folder)
    {
        BookPeek look = BookStore.Peek(folder);
        return look.Book is { } book ? new Seen(book, look.Holder) : null;
    }

    /// <inheritdoc/>
    public StoreFolder? Folder => folder;

    /// <inheritdoc/>
    public Seen Peek()
    {
        // Whether a folder is free is only sure once it is taken: its last holder may have been killed.
        try
        {
            held ??= BookStore.Open(folder);
            return new Seen(held.Load() ?? throw Gone(), null);
        }
        catch (StoreException fault) when (fault.Fault is FolderFault.Taken)
        {
            return First(folder) ?? throw Gone();
        }
        catch
        {
            GiveBack();
            throw;
        }
    }

    /// <inheritdoc/>
    public FolderGlance Glance(FolderGlance? before) =>
        held is null ? FolderGlance.Of(folder, before) : new FolderGlance(IsFree: true, FolderHolder.Unknown, FileFacts.Of(folder.Journal));

    /// <inheritdoc/>
    public BookSession Open() => new(held!, held!.Load() ?? throw Gone(), today);

    /// <inheritdoc/>
    public void GiveBack()
    {
        held?.Dispose();
        held = null;
    }

    /// <inheritdoc/>
    public void Dispose() => GiveBack();

    private StoreException Gone() => new(new FolderFault.HouseholdGone(folder.Path));
}
