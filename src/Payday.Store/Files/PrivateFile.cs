namespace Payday.Store.Files;

/// <summary>Files that only their owner may read, and in a folder that a group shares that group.</summary>
internal static class PrivateFile
{
    /// <summary>Opens a file, making it for its owner alone (0600) where it is missing, or for its group too (0660) in a <see cref="SharedFolder"/>.</summary>
    /// <remarks>Without a buffer: what is written is with the operating system at once.</remarks>
    public static FileStream Open(string path, FileShare share)
    {
        var options = new FileStreamOptions { Mode = FileMode.OpenOrCreate, Access = FileAccess.ReadWrite, Share = share, BufferSize = 0 };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        var file = new FileStream(path, options);
        if (SharedFolder.Holds(path))
        {
            SharedFolder.Share(file.SafeFileHandle);
        }

        return file;
    }
}
