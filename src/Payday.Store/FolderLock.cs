using System.Globalization;

namespace Payday.Store;

/// <summary>The one writer of a data folder. Released by the system even when the process is killed.</summary>
/// <remarks>
/// The database itself does not keep two processes apart. A file opened with <see cref="FileShare.None"/>
/// does, on every local file system; the process and the time in it are for the message only.
/// </remarks>
internal sealed class FolderLock : IDisposable
{
    private readonly FileStream stream;

    private FolderLock(FileStream stream) => this.stream = stream;

    /// <summary>Takes the lock.</summary>
    /// <exception cref="StoreException">Another process has it, or the folder can't be written.</exception>
    public static FolderLock Take(StoreFolder folder)
    {
        try
        {
            var options = new FileStreamOptions { Mode = FileMode.OpenOrCreate, Access = FileAccess.ReadWrite, Share = FileShare.None };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            var stream = new FileStream(folder.Lock, options);
            stream.SetLength(0);
            string holder = string.Create(CultureInfo.InvariantCulture, $"process {Environment.ProcessId}, since {DateTimeOffset.Now:yyyy-MM-dd HH:mm}");
            stream.Write(System.Text.Encoding.UTF8.GetBytes(holder));
            stream.Flush();
            return new FolderLock(stream);
        }
        catch (IOException fault) when (File.Exists(folder.Lock) && IsSharing(fault))
        {
            throw new StoreException($"Another Payday has {folder.Path} open ({Holder(folder)}). Close it there and try again.", fault);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();

    // EWOULDBLOCK, as .NET reports a lock that is taken: 11 on Linux, 35 on macOS, and the Windows sharing violation.
    private static bool IsSharing(IOException fault) => fault.HResult is 11 or 35 or unchecked((int)0x80070020);

    private static string Holder(StoreFolder folder)
    {
        try
        {
            using var reader = new StreamReader(new FileStream(folder.Lock, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete));
            char[] text = new char[80];
            int length = reader.Read(text, 0, text.Length);
            string holder = new([.. text.Take(length).Where(c => !char.IsControl(c))]);
            return holder.Length == 0 ? "holder unknown" : holder;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return "holder unknown";
        }
    }
}
