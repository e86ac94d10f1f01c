namespace Payday.Store.Files;

/// <summary>Files that only their owner may read.</summary>
internal static class PrivateFile
{
    /// <summary>Opens a file, making it for its owner alone (0600) where it is missing.</summary>
    /// <remarks>Without a buffer: what is written is with the operating system at once.</remarks>
    public static FileStream Open(string path, FileShare share)
    {
        var options = new FileStreamOptions { Mode = FileMode.OpenOrCreate, Access = FileAccess.ReadWrite, Share = share, BufferSize = 0 };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return new FileStream(path, options);
    }
}
