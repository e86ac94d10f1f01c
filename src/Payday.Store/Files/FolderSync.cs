using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Payday.Store.Files;

/// <summary>Makes the names in a folder outlive a power cut: files that were made, renamed or deleted there.</summary>
/// <remarks>
/// Syncing a file puts its bytes on the disk; its name is part of the folder and is synced with that (Linux, fsync(2):
/// "an explicit fsync() on a file descriptor for the directory is also needed"). .NET opens no folders, so the one call
/// that does is libc's. Windows keeps names in the log of its file system and has no such call.
/// </remarks>
internal static partial class FolderSync
{
    private const int ReadOnly = 0;
    private const int NotPermitted = 1;
    private const int AccessDenied = 13;

    /// <summary>Called before each sync with the folder; a simulation of power cuts looks at the names there.</summary>
    internal static Action<string>? Syncing { get; set; }

    /// <summary>Waits until the names in a folder are on the disk. A file system that can't do that is left alone.</summary>
    /// <exception cref="UnauthorizedAccessException">The folder may not be read.</exception>
    /// <exception cref="IOException">The disk failed, or the folder is not there.</exception>
    public static void Of(string folder)
    {
        Syncing?.Invoke(folder);
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        int descriptor = Open(folder, ReadOnly);
        if (descriptor < 0)
        {
            int error = Marshal.GetLastPInvokeError();
            string message = $"{folder}: {Marshal.GetPInvokeErrorMessage(error)}";
            throw error is NotPermitted or AccessDenied ? new UnauthorizedAccessException(message) : new IOException(message, error);
        }

        using var handle = new SafeFileHandle(descriptor, ownsHandle: true);
        DiskSync.Of(handle, folder);
    }

    /// <summary>The same for the folder that a file is in.</summary>
    public static void OfFile(string path) => Of(Path.GetDirectoryName(Path.GetFullPath(path))!);

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Open(string path, int flags);
}
