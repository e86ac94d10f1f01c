using Payday.Store.Backups;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Restores;

/// <summary>Backups made by the person; for putting them back see <see cref="Restoring"/>.</summary>
public static class StoreBackups
{
    /// <summary>Makes a backup now and reads it again.</summary>
    /// <param name="store">The store, open.</param>
    /// <param name="into">The folder to copy to, which must be there; null for the one in the data folder.</param>
    /// <exception cref="StoreException">It could not be made.</exception>
    public static BackupFile Make(BookStore store, string? into)
    {
        ArgumentNullException.ThrowIfNull(store);
        try
        {
            if (into is null)
            {
                PrivateFolder.Make(store.Folder.Backups);
            }

            return BackupFiles.Make(store.Folder, JournalScan.Read(store.Folder.Journal), into ?? store.Folder.Backups, isHandMade: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(new BackupFault.NotWritten(into ?? store.Folder.Backups, Troubles.Of(fault)), fault);
        }
    }

    /// <summary>Names the folder to which every backup goes too; null for none.</summary>
    public static void Always(BookStore store, string? into)
    {
        ArgumentNullException.ThrowIfNull(store);
        StoreFaults.Explained(store.Folder, StoreAction.Write, () =>
        {
            SecondPlace.Set(store.Folder, into);
            return true;
        });
    }
}
