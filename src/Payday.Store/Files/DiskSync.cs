using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Payday.Store.Files;

/// <summary>Waits until what was written to a file is on the disk, and says so where it can't be.</summary>
/// <remarks>
/// The same as <see cref="FileStream.Flush(bool)"/>, but for its faults: that one of .NET 10 on Linux returns as if all
/// were well when fsync fails, so what a failing disk lost would count as stored (seen with strace, EIO and ENOSPC).
/// </remarks>
internal static partial class DiskSync
{
    private const int Interrupted = 4;
    private const int Invalid = 22;
    private const int NotSupportedLinux = 95;
    private const int NotSupportedMac = 45;

    /// <summary>Syncs a file.</summary>
    /// <exception cref="IOException">The disk could not take it, now or since it was last synced.</exception>
    public static void Of(FileStream file)
    {
        file.Flush();
        Of(file.SafeFileHandle, file.Name);
    }

    /// <summary>Syncs a file or folder. Where its file system can't do that, nothing happens.</summary>
    /// <exception cref="IOException">The disk could not take it.</exception>
    public static void Of(SafeFileHandle handle, string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            // On macOS this also empties the buffers of the disk itself.
            RandomAccess.FlushToDisk(handle);
        }

        while (!OperatingSystem.IsWindows() && Sync(handle) < 0)
        {
            int error = Marshal.GetLastPInvokeError();
            if (error is Invalid or NotSupportedLinux or NotSupportedMac)
            {
                return;
            }

            if (error != Interrupted)
            {
                throw new IOException($"{path}: {Marshal.GetPInvokeErrorMessage(error)}", error);
            }
        }
    }

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Sync(SafeFileHandle handle);
}
