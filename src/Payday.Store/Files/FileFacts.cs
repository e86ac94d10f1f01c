using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Payday.Store.Files;

/// <summary>What the system says of a name before anything is opened: what it stands for, and which file that is.</summary>
/// <remarks>
/// .NET has no way to ask whether opening would wait (a pipe) or never end (a device), nor which file stands behind a
/// name. On Linux that is statx(2), whose answer has the same layout on every processor; elsewhere links and folders
/// are told apart, and <see cref="Identity"/> says nothing.
/// </remarks>
/// <param name="Kind">What it is.</param>
/// <param name="Identity">Device and inode; the default where they are not known.</param>
/// <param name="Owner">The number of the user it belongs to; null where that is not known.</param>
/// <param name="Length">How long a file is, in bytes.</param>
public readonly partial record struct FileFacts(FileKind Kind, FileIdentity Identity, uint? Owner, long Length)
{
    private const int PermissionBits = 0xFFF;
    private const int Here = -100;
    private const int NotThrough = 0x100;
    private const int OfDescriptor = 0x1000;
    private const uint BasicFacts = 0x7FF;
    private const int NoSuchName = 2;
    private const int NotPermitted = 1;
    private const int NoAccess = 13;
    private const int NoFolder = 20;
    private const int Loop = 40;
    private const int TypeBits = 0xF000;

    /// <summary>What may be done with it, with setuid, setgid and sticky bit; null where that is not known.</summary>
    public UnixFileMode? Mode { get; init; }

    /// <summary>The facts of a name itself: of a link, not of what it points to.</summary>
    public static FileFacts Of(string path) => Ask(path, NotThrough);

    /// <summary>The facts of what a name leads to, through links.</summary>
    public static FileFacts Behind(string path) => Ask(path, 0);

    /// <summary>The facts of a file that is open.</summary>
    public static FileFacts Of(SafeFileHandle open) => OperatingSystem.IsLinux() && Call(open, "", OfDescriptor, BasicFacts, out Answer answer) == 0
        ? answer.Facts
        : new FileFacts(FileKind.Unknown, default, null, 0);

    /// <summary>Whether there is nothing, as far as can be seen.</summary>
    public bool IsNothing => Kind is FileKind.None or FileKind.Blocked;

    /// <summary>Whether the system doesn't say what there is.</summary>
    public bool IsUntold => Kind is FileKind.Unknown or FileKind.Closed;

    /// <summary>Whether two paths lead to the same thing; paths that lead to nothing do not.</summary>
    public static bool AreSame(string left, string right)
    {
        FileFacts one = Behind(left);
        FileFacts other = Behind(right);
        return !one.IsNothing && one.Kind != FileKind.Closed
            && (one.Identity == default || other.Identity == default
                ? string.Equals(Path.GetFullPath(left), Path.GetFullPath(right), StringComparison.Ordinal)
                : one.Identity == other.Identity);
    }

    /// <summary>Whether this is the file of a name. Where the system doesn't say, a file that is there counts as it.</summary>
    public bool IsStillAt(string path)
    {
        FileFacts now = Of(path);
        return (now.Kind == FileKind.File || now.IsUntold) && (now.Identity == default || Identity == default || now.Identity == Identity);
    }

    private static FileFacts Ask(string path, int flags)
    {
        if (!OperatingSystem.IsLinux())
        {
            return Guess(path, flags);
        }

        if (Call(Here, path, flags, BasicFacts, out Answer answer) == 0)
        {
            return answer.Facts;
        }

        // Other errors: a system that doesn't know the call, or doesn't allow it.
        return Marshal.GetLastPInvokeError() switch
        {
            NoSuchName => default,
            NoFolder or Loop => new FileFacts(FileKind.Blocked, default, null, 0),
            NoAccess or NotPermitted => new FileFacts(FileKind.Closed, default, null, 0),
            _ => Guess(path, flags),
        };
    }

    private static FileFacts Guess(string path, int flags)
    {
        var file = new FileInfo(path);
        FileKind kind = file.LinkTarget is not null && flags == NotThrough ? FileKind.Link
            : Directory.Exists(path) ? FileKind.Folder
            : file.Exists ? FileKind.File
            : FileKind.None;
        return new FileFacts(kind, default, null, kind == FileKind.File ? file.Length : 0);
    }

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Call(int folder, string path, int flags, uint mask, out Answer answer);

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Call(SafeFileHandle open, string path, int flags, uint mask, out Answer answer);

    // struct statx of Linux: 256 bytes, of which these are looked at.
    [StructLayout(LayoutKind.Explicit, Size = 256)]
    private readonly struct Answer
    {
        [FieldOffset(20)]
        private readonly uint owner;

        [FieldOffset(28)]
        private readonly ushort mode;

        [FieldOffset(32)]
        private readonly ulong inode;

        [FieldOffset(40)]
        private readonly ulong size;

        [FieldOffset(136)]
        private readonly uint major;

        [FieldOffset(140)]
        private readonly uint minor;

        public FileFacts Facts => new(Kind, new FileIdentity(major, minor, inode), owner, (long)Math.Min(size, long.MaxValue)) { Mode = (UnixFileMode)(mode & PermissionBits) };

        private FileKind Kind => (mode & TypeBits) switch
        {
            0x8000 => FileKind.File,
            0x4000 => FileKind.Folder,
            0xA000 => FileKind.Link,
            0x1000 => FileKind.Pipe,
            0xC000 => FileKind.Socket,
            0x2000 or 0x6000 => FileKind.Device,
            _ => FileKind.Unknown,
        };
    }
}
