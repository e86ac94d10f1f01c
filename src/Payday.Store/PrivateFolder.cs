namespace Payday.Store;

/// <summary>Folders that only their owner may enter.</summary>
internal static class PrivateFolder
{
    /// <summary>Makes a folder, for its owner alone (0700); one that is there keeps its permissions.</summary>
    public static void Make(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }
}
