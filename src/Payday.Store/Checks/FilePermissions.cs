using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Checks;

/// <summary>Who may read what is stored: its owner alone, and the group where it shares the folder (<see cref="SharedFolder"/>).</summary>
/// <remarks>
/// Looked at and closed are the folder and what Payday has in it, nothing else that a person keeps there. Links are
/// never followed: what they point to is elsewhere and has eyes of its own.
/// </remarks>
internal static partial class FilePermissions
{
    private const UnixFileMode AllOthers =
        UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    // O_NONBLOCK and O_NOFOLLOW of Linux, but for the processors on which the second has another number.
    private const int WithoutWaiting = 0x800;
    private static readonly int notThroughLinks = RuntimeInformation.ProcessArchitecture is Architecture.X64 or Architecture.X86 ? 0x20000 : 0x8000;

    /// <summary>The folder and what Payday has in it that others may read or write.</summary>
    public static ImmutableArray<string> Loose(StoreFolder folder) => Directory.Exists(folder.Path)
        ? [.. Ours(folder).Prepend(Named(folder.Path)).Where(path => IsLoose(path, Others(folder.Path)))]
        : [];

    /// <summary>Whether others may enter a folder or see what is in it. Where they can't, nothing in it is open to them.</summary>
    public static bool IsOpen(string folder) => IsLoose(Named(folder), Others(folder));

    /// <summary>Whether <see cref="Close(StoreFolder)"/> can take something from others' eyes: it belongs to the person who runs this, and may be opened.</summary>
    public static bool CanClose(string path) =>
        !OperatingSystem.IsLinux() || Environment.IsPrivilegedProcess
        || (FileFacts.Of(path).Owner is not { } owner || owner == User()) && (File.GetUnixFileMode(path) & UnixFileMode.UserRead) != 0;

    /// <summary>Takes them from the others.</summary>
    /// <returns>What was done.</returns>
    public static IEnumerable<StoreFault> Close(StoreFolder folder)
    {
        UnixFileMode others = Others(folder.Path);
        foreach (string path in Loose(folder).Where(CanClose))
        {
            Close(path, others);
            yield return others == AllOthers ? new FolderDoubt.ClosedToOthers(path) : new FolderDoubt.ClosedToStrangers(path);
        }
    }

    /// <summary>In a folder that a group shares: lets it into what is this person's own there, such as a book that was theirs alone before.</summary>
    public static void Share(StoreFolder folder)
    {
        if (!OperatingSystem.IsLinux() || !SharedFolder.Is(folder.Path))
        {
            return;
        }

        foreach (string path in Ours(folder).Where(path => FileFacts.Of(path) is { Kind: FileKind.File or FileKind.Folder } facts && facts.Owner == User()))
        {
            // A folder gets the sign as well, so that what is made in it later is the group's.
            using SafeFileHandle open = Open(path, WithoutWaiting | notThroughLinks);
            if (!open.IsInvalid)
            {
                SharedFolder.Share(open);
            }
        }
    }

    private static UnixFileMode Others(string folder) => SharedFolder.Is(folder) ? SharedFolder.Strangers : AllOthers;

    // The data folder itself is the one that the person named, through a link or not.
    private static string Named(string folder) => Directory.ResolveLinkTarget(folder, returnFinalTarget: true)?.FullName ?? folder;

    // In the folders within: all that is there, for each copy in them is one of the household.
    private static IEnumerable<string> Ours(StoreFolder folder) =>
    [
        .. folder.Files,
        .. ForeignCopies.In(folder).Select(name => Path.Combine(folder.Path, name)),
        .. new[] { folder.Backups, folder.Aside }.Where(within => FileFacts.Of(within).Kind == FileKind.Folder)
            .SelectMany(within => Directory.EnumerateFileSystemEntries(within).Prepend(within)),
    ];

    private static bool IsLoose(string path, UnixFileMode others) => !OperatingSystem.IsWindows()
        && FileFacts.Of(path).Kind is FileKind.File or FileKind.Folder
        && (File.GetUnixFileMode(path) & others) != 0;

    private static void Close(string path, UnixFileMode others)
    {
        if (OperatingSystem.IsLinux())
        {
            // Through what is open and not through the name, which may have become a link since it was looked at.
            using SafeFileHandle open = Open(path, WithoutWaiting | notThroughLinks);
            if (open.IsInvalid)
            {
                throw new UnauthorizedAccessException(path);
            }

            File.SetUnixFileMode(open, File.GetUnixFileMode(open) & ~others);
        }
        else if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, File.GetUnixFileMode(path) & ~others);
        }
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial SafeFileHandle Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "geteuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial uint User();
}
