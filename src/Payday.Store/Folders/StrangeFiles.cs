using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>Things that are no files and stand in the place of Payday's: named, and never opened, waited on or followed.</summary>
internal static class StrangeFiles
{
    /// <summary>Refuses a folder in which something else stands in the place of a file of Payday's.</summary>
    /// <exception cref="StoreException">Something does.</exception>
    public static void Refuse(StoreFolder folder)
    {
        foreach (string path in folder.Files)
        {
            if (FileFacts.Of(path).Kind is var kind && !IsFile(kind))
            {
                throw new StoreException(new FolderFault.Strange(path, kind));
            }
        }
    }

    /// <summary>Whether something can be opened as a file, or is not there.</summary>
    public static bool IsFile(FileKind kind) => kind is FileKind.None or FileKind.Blocked or FileKind.File or FileKind.Unknown or FileKind.Closed;
}
