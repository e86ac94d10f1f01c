using System.Runtime.InteropServices;

namespace Payday.Commands;

/// <summary>A descriptor that the shell opened for this process, read from or written to as it is.</summary>
/// <remarks>
/// The console's own streams look into the terminal's description first and fail where that is damaged; a file's stream
/// would write at a place of its own, over what others write into the same file.
/// </remarks>
/// <param name="number">The descriptor.</param>
internal sealed partial class DescriptorStream(int number) : Stream
{
    // EINTR, EAGAIN, EPIPE.
    private const int Interrupted = 4;
    private const int NotNow = 11;
    private const int NotNowMac = 35;
    private const int NobodyReads = 32;
    private const int Patience = 10;

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        while (true)
        {
            nint read = Read(number, ref MemoryMarshal.GetReference(buffer), buffer.Length);
            if (read >= 0)
            {
                return (int)read;
            }

            Bear(Marshal.GetLastPInvokeError());
        }
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (!buffer.IsEmpty)
        {
            nint written = Write(number, ref MemoryMarshal.GetReference(buffer), buffer.Length);
            if (written >= 0)
            {
                buffer = buffer[(int)written..];
                continue;
            }

            int error = Marshal.GetLastPInvokeError();
            if (error == NobodyReads)
            {
                // Whoever read it has seen enough, as with a pager that was left.
                return;
            }

            Bear(error);
        }
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    private static void Bear(int error)
    {
        switch (error)
        {
            case Interrupted:
                return;
            case NotNow or NotNowMac:
                Thread.Sleep(Patience);
                return;
            default:
                throw new IOException(Marshal.GetPInvokeErrorMessage(error), error);
        }
    }

    [LibraryImport("libc", EntryPoint = "read", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Read(int number, ref byte buffer, nint count);

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Write(int number, ref readonly byte buffer, nint count);
}
