using Payday.Store.Files;

namespace Payday.Store.Backups;

/// <summary>What is in the way of backups before any is begun.</summary>
internal static class BackupFaults
{
    /// <summary>Refuses a place for backups that is there and is no folder.</summary>
    /// <exception cref="StoreException">It is none.</exception>
    public static void RefuseNoFolder(string into)
    {
        if (!Directory.Exists(into) && FileFacts.Of(into).Kind is not (FileKind.None or FileKind.Blocked or FileKind.Unknown or FileKind.Closed) and var kind)
        {
            throw new StoreException(kind == FileKind.Link ? new BackupFault.LinkToNothing(into) : new BackupFault.NoFolder(into, kind));
        }
    }
}
