
namespace Payday.Store.Files;

/// <summary>Folders that only their owner may enter, and within one that a group shares that group.</summary>
internal static class PrivateFolder
{
    /// <summary>Makes a folder, for its owner alone (0700), within a <see cref="SharedFolder"/> for its group too, and syncs its name to disk; one that is there keeps its permissions.</summary>
    /// <exception cref="StoreException">Something else is there.</exception>
    public static void Make(string path)
    {
        if (FileFacts.Of(path).Kind is var kind && !Directory.Exists(path) && kind is not (FileKind.None or FileKind.Blocked or FileKind.Unknown or FileKind.Closed))
        {
            throw new StoreException(kind == FileKind.Link ? new PlaceFault.LinkToNothing(path) : new PlaceFault.NoFolder(path, kind));
        }

        string[] missing = [.. Missing(path)];
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        foreach (string made in missing.Reverse())
        {
            if (SharedFolder.Holds(made))
            {
                SharedFolder.ShareFolder(made);
            }

            FolderSync.OfFile(made);
        }
    }

    // The folder and those above it that have to be made with it, the highest last.
    private static IEnumerable<string> Missing(string path)
    {
        for (string? folder = Path.GetFullPath(path); folder is not null && !Directory.Exists(folder); folder = Path.GetDirectoryName(folder))
        {
            yield return folder;
        }
    }
}
