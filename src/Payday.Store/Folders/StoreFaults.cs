using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Turns what the system and the database throw into a case of the store's own.</summary>
internal static class StoreFaults
{
    /// <summary>Does the work; a fault of disk or database comes out as a <see cref="StoreException"/>.</summary>
    /// <param name="folder">The folder the work is on.</param>
    /// <param name="action">What is tried.</param>
    /// <param name="work">The work.</param>
    public static T Explained<T>(StoreFolder folder, StoreAction action, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception fault) when (fault is not StoreException)
        {
            throw new StoreException(Of(folder, action, fault), fault);
        }
    }

    /// <summary>That the database is damaged, to be thrown.</summary>
    public static StoreException Damage(StoreFolder folder) => new(Damaged(folder));

    /// <summary>Whether a fault met in reading a database means that the database is damaged, and not that the system is in the way.</summary>
    public static bool IsDamage(Exception fault) => fault switch
    {
        StoreException store => store.Fault.IsDamage,
        EndOfStreamException => true,
        UnauthorizedAccessException or IOException or OutOfMemoryException => false,
        _ => true,
    };

    private static StoreFault Of(StoreFolder folder, StoreAction action, Exception fault) => fault switch
    {
        UnauthorizedAccessException => new FolderFault.Denied(folder.Path, action),
        PathTooLongException or DirectoryNotFoundException => new FolderFault.CantBeMade(folder.Path),
        EndOfStreamException => Damaged(folder),
        IOException => Troubles.Of(fault) switch
        {
            Trouble.Full => new FolderFault.DiskFull(folder.Path),
            Trouble.ReadOnly => new FolderFault.DiskReadOnly(folder.Path),
            Trouble.Blocked => new FolderFault.CantBeMade(folder.Path),
            _ => new FolderFault.DiskFailed(folder.Path, action),
        },
        _ when action == StoreAction.Write => new FolderFault.NotStored(folder.Path),

        // What is read comes from a file, and a damaged one makes the database trip in any way there is.
        _ => Damaged(folder),
    };

    private static DatabaseFault.Damaged Damaged(StoreFolder folder) => new(folder.Database);
}
