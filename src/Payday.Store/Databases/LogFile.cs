using System.Runtime.ExceptionServices;
using Payday.Store.Files;

namespace Payday.Store.Databases;

/// <summary>The log of a database, on which LiteDB never meets a fault in the middle of a commit.</summary>
/// <remarks>
/// A write that fails inside a commit of LiteDB 5.0.21 leaves a transaction whose finalizer throws, and that ends the
/// process at some later moment. So a fault is kept until <see cref="Sync"/>, and nothing is written after it: the
/// page that confirms a transaction is its last, so one that is cut off is as good as never written.
/// </remarks>
internal sealed class LogFile : Stream
{
    private readonly string path;
    private readonly FileStream file;
    private Exception? fault;

    // Whether the folder has the name of this log on the disk, and not that of one before.
    private bool isNamed;
    private bool isAbandoned;

    /// <summary>Opens a log, making it where it is missing.</summary>
    public LogFile(string path)
    {
        this.path = path;
        file = PrivateFile.Open(path, FileShare.Read);
    }

    /// <summary>Called each time a log is synced, with its path; a simulation of power cuts looks at the files there.</summary>
    internal static Action<string>? Synced { get; set; }

    /// <summary>Leaves the file where it is when this is closed: another process may have it open.</summary>
    public void Abandon() => isAbandoned = true;

    /// <summary>Whether the file of its name is still this one.</summary>
    public bool IsThere => FileFacts.Of(file.SafeFileHandle).IsStillAt(path);

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => true;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => file.Length;

    /// <inheritdoc/>
    public override long Position
    {
        get => file.Position;
        set => file.Position = value;
    }

    /// <summary>Waits until all that was written is on the disk.</summary>
    /// <exception cref="IOException">It could not be written, now or since the log was opened.</exception>
    public void Sync()
    {
        if (fault is not null)
        {
            ExceptionDispatchInfo.Throw(fault);
        }

        DiskSync.Of(file);
        if (!isNamed)
        {
            FolderSync.OfFile(path);
            isNamed = true;
        }

        Synced?.Invoke(path);
    }

    /// <summary>Takes off what was added after a length.</summary>
    public void Cut(long length)
    {
        if (file.Length > length)
        {
            file.SetLength(length);
            DiskSync.Of(file);
        }
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => file.Read(buffer, offset, count);

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        if (fault is not null)
        {
            return;
        }

        try
        {
            file.Write(buffer, offset, count);
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            fault = thrown;
        }
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => file.Seek(offset, origin);

    /// <inheritdoc/>
    public override void SetLength(long value) => file.SetLength(value);

    /// <inheritdoc/>
    public override void Flush() => file.Flush();

    /// <summary>Closes the log; one that holds nothing goes.</summary>
    protected override void Dispose(bool disposing)
    {
        if (disposing && file.CanRead)
        {
            // Another log that stands in its place by now is not this one's to delete.
            bool isEmpty = file.Length == 0 && IsThere && !isAbandoned;
            file.Dispose();
            if (isEmpty)
            {
                File.Delete(path);
            }
        }

        base.Dispose(disposing);
    }
}
