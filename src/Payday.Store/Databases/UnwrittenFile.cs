namespace Payday.Store.Databases;

/// <summary>A file of a database that is only looked at: what is written goes into memory, and the file stays as it is.</summary>
/// <remarks>
/// LiteDB writes also where it is only read from: a log goes into the data file, and a page that it can't read makes it
/// mark the whole file as damaged. A look that leaves such traces would be another one the next time.
/// </remarks>
internal sealed class UnwrittenFile : Stream
{
    private const int PageSize = 8192;

    private readonly FileStream? file;
    private readonly Dictionary<long, byte[]> pages = [];

    // What of the file is still its own: what was cut off does not come back.
    private long untouched;
    private long length;

    /// <summary>Opens a file as one that could be written to; one that is missing is empty.</summary>
    /// <exception cref="IOException">It can't be opened so.</exception>
    public UnwrittenFile(string path)
    {
        if (File.Exists(path))
        {
            file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Read, bufferSize: 0);
            untouched = length = file.Length;
        }
    }

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => true;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => length;

    /// <inheritdoc/>
    public override long Position { get; set; }

    /// <summary>Closes the file. LiteDB disposes of a stream while it still reads from it, so that does nothing here.</summary>
    public void CloseFile() => file?.Dispose();

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count)
    {
        int most = (int)Math.Clamp(length - Position, 0, count);
        for (int done = 0; done < most;)
        {
            (long number, int start) = Place();
            int here = Math.Min(most - done, PageSize - start);
            Span<byte> part = buffer.AsSpan(offset + done, here);
            if (pages.TryGetValue(number, out byte[]? page))
            {
                page.AsSpan(start, here).CopyTo(part);
            }
            else
            {
                ReadFile(part, Position);
            }

            Position += here;
            done += here;
        }

        return most;
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        for (int done = 0; done < count;)
        {
            (long number, int start) = Place();
            int here = Math.Min(count - done, PageSize - start);
            if (!pages.TryGetValue(number, out byte[]? page))
            {
                pages[number] = page = new byte[PageSize];
                ReadFile(page, number * PageSize);
            }

            buffer.AsSpan(offset + done, here).CopyTo(page.AsSpan(start));
            Position += here;
            done += here;
        }

        length = Math.Max(length, Position);
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => Position = offset + origin switch
    {
        SeekOrigin.Begin => 0,
        SeekOrigin.Current => Position,
        _ => length,
    };

    /// <inheritdoc/>
    public override void SetLength(long value)
    {
        untouched = Math.Min(untouched, value);
        foreach ((long number, byte[] page) in pages.Where(page => (page.Key + 1) * PageSize > value).ToArray())
        {
            page.AsSpan((int)Math.Max(0, value - (number * PageSize))).Clear();
        }

        length = value;
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        // There is nothing to bring anywhere.
    }

    private (long Page, int Start) Place() => (Position / PageSize, (int)(Position % PageSize));

    // Zero where the file has nothing.
    private void ReadFile(Span<byte> bytes, long position)
    {
        int there = (int)Math.Clamp(untouched - position, 0, bytes.Length);
        bytes[there..].Clear();
        for (int done = 0; done < there;)
        {
            int read = RandomAccess.Read(file!.SafeFileHandle, bytes[done..there], position + done);
            done += read > 0 ? read : throw new EndOfStreamException();
        }
    }
}
