using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Payday.Store;

/// <summary>What the system says of a path, links followed, without opening what is there.</summary>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Device">The device that holds it; 0 where that is not known.</param>
/// <param name="Number">Its number on that device; with <paramref name="Device"/> it says which file it is, whatever its name.</param>
/// <param name="Owner">The user it belongs to; null where that is not known.</param>
/// <remarks>
/// The layout is that of <c>struct statx</c>, the same on every Linux (statx(2), linux/stat.h). Elsewhere only the kind is
/// known, and only as far as the runtime tells it.
/// </remarks>
public readonly partial record struct FileFacts(FileKind Kind, ulong Device, ulong Number, uint? Owner)
{
    private const int FromCurrentFolder = -100;
    private const uint Basic = 0x7FF;
    private const int Size = 256;
    private const int OwnerAt = 20;
    private const int ModeAt = 28;
    private const int NumberAt = 32;
    private const int DeviceAt = 136;

    // EPERM, ENOENT, EACCES, ENOTDIR, ELOOP.
    private const int NotPermitted = 1;
    private const int NoEntry = 2;
    private const int NoAccess = 13;
    private const int NoFolder = 20;
    private const int Loop = 40;

    /// <summary>Whether what it tells of can't be told from another by its number.</summary>
    public bool IsNameless => Number == 0;

    /// <summary>Looks at a path.</summary>
    public static FileFacts Of(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (!OperatingSystem.IsLinux())
        {
            return OfRuntime(path);
        }

        Span<byte> found = stackalloc byte[Size];
        try
        {
            if (Statx(FromCurrentFolder, path, 0, Basic, ref MemoryMarshal.GetReference(found)) == 0)
            {
                return new FileFacts(
                    KindOf(BinaryPrimitives.ReadUInt16LittleEndian(found[ModeAt..])),
                    BinaryPrimitives.ReadUInt64LittleEndian(found[DeviceAt..]),
                    BinaryPrimitives.ReadUInt64LittleEndian(found[NumberAt..]),
                    BinaryPrimitives.ReadUInt32LittleEndian(found[OwnerAt..]));
            }
        }
        catch (EntryPointNotFoundException)
        {
            return OfRuntime(path);
        }

        return Marshal.GetLastPInvokeError() switch
        {
            NoEntry => new FileFacts(FileKind.Missing, 0, 0, null),
            NoFolder or Loop => new FileFacts(FileKind.Blocked, 0, 0, null),
            NoAccess or NotPermitted => new FileFacts(FileKind.Closed, 0, 0, null),

            // The system doesn't know the question, or the disk failed: whoever opens it will see.
            _ => OfRuntime(path),
        };
    }

    /// <summary>Whether two paths lead to the same thing; paths that lead to nothing do not.</summary>
    public static bool AreSame(string left, string right)
    {
        FileFacts one = Of(left);
        FileFacts other = Of(right);
        return one.Kind is not (FileKind.Missing or FileKind.Blocked or FileKind.Closed)
            && (one.IsNameless || other.IsNameless
                ? string.Equals(Path.GetFullPath(left), Path.GetFullPath(right), StringComparison.Ordinal)
                : (one.Device, one.Number) == (other.Device, other.Number));
    }

    private static FileFacts OfRuntime(string path) => new(
        Directory.Exists(path) ? FileKind.Folder : File.Exists(path) ? FileKind.File : FileKind.Missing, 0, 0, null);

    // The type is in the upper bits of the mode (inode(7)).
    private static FileKind KindOf(int mode) => (mode & 0xF000) switch
    {
        0x8000 => FileKind.File,
        0x4000 => FileKind.Folder,
        0x1000 or 0xC000 => FileKind.Pipe,
        _ => FileKind.Device,
    };

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Statx(int folder, string path, int flags, uint mask, ref byte found);
}
