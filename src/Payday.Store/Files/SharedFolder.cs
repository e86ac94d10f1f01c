using Microsoft.Win32.SafeHandles;

namespace Payday.Store.Files;

/// <summary>A folder that people of one group share, each with an account of their own on the machine.</summary>
/// <remarks>
/// That a folder is meant to be one is said by its mode (our own rule): its group may do all in it, and its setgid bit gives
/// what is made there to that group (inode(7)). What Payday makes in such a folder is for the group as well, whatever the
/// umask of who runs it; anywhere else it is for its owner alone.
/// </remarks>
internal static class SharedFolder
{
    /// <summary>What others than its owner and its group may do.</summary>
    public const UnixFileMode Strangers = UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    private const UnixFileMode Group = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute;
    private const UnixFileMode Owner = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode Sign = Group | UnixFileMode.SetGroup;
    private const UnixFileMode OfFile = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite;

    /// <summary>Whether a folder is one, itself or behind links.</summary>
    public static bool Is(string folder) => !OperatingSystem.IsWindows() && FileFacts.Behind(folder) is { Kind: FileKind.Folder, Mode: { } mode } && (mode & Sign) == Sign;

    /// <summary>Whether a file or folder lies in one.</summary>
    public static bool Holds(string path) => Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder && Is(folder);

    /// <summary>Lets the group into a file or folder of such a folder, which is open; one that isn't this person's keeps its mode.</summary>
    public static void Share(SafeFileHandle open)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        UnixFileMode mode = File.GetUnixFileMode(open);
        UnixFileMode wanted = FileFacts.Of(open).Kind == FileKind.Folder ? Sign : OfFile;
        if ((mode & wanted) == wanted)
        {
            return;
        }

        try
        {
            File.SetUnixFileMode(open, mode | wanted);
        }
        catch (UnauthorizedAccessException)
        {
            // Only its owner may; who is here has it open already, or was refused.
        }
    }

    /// <summary>Lets the group of its folder into one that was just made there.</summary>
    public static void ShareFolder(string made)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(made, Owner | Sign);
        }
    }
}
