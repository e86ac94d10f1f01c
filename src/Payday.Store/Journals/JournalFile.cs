using Payday.Store.Files;

namespace Payday.Store.Journals;

/// <summary>The journal while the store is open: it grows by whole, synced lines.</summary>
internal sealed class JournalFile : IDisposable
{
    private const int TailAtFirst = 64 * 1024;
    private readonly FileStream file;
    private readonly FileFacts facts;

    // Where it ends as far as this process wrote it.
    private long end;

    private JournalFile(FileStream file)
    {
        this.file = file;
        facts = FileFacts.Of(file.SafeFileHandle);
        end = file.Length;
    }

    /// <summary>The last line; null in an empty journal.</summary>
    public JournalLine? Last { get; private set; }

    /// <summary>How long the file is, in bytes.</summary>
    public long Length => file.Length;

    /// <summary>Whether the file of its name is still this one.</summary>
    public bool IsThere => facts.IsStillAt(file.Name);

    /// <summary>Whether it ends where this process left it: nobody else has written to it, or cut it.</summary>
    public bool IsAsLeft => file.Length == end;

    /// <summary>The place after its last line.</summary>
    public JournalPlace End => new(Last?.Number ?? 0, Last?.Sha ?? JournalLine.Nothing, file.Length);

    /// <summary>Opens a journal, making it where it is missing, and reads its last line alone.</summary>
    /// <returns>The journal; null where its last line is not whole.</returns>
    public static JournalFile? OpenSound(string path)
    {
        bool isNew = !File.Exists(path);
        FileStream file = PrivateFile.Open(path, FileShare.Read);
        try
        {
            if (isNew)
            {
                FolderSync.OfFile(path);
            }

            return Sound(file);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>Opens a journal that another process may be writing to.</summary>
    /// <returns>The journal; null where its last line is not whole.</returns>
    public static JournalFile? OpenToLook(string path) =>
        Sound(new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0));

    /// <summary>The lines after a place.</summary>
    /// <returns>The lines; null where they don't go on from there to the last one.</returns>
    public IReadOnlyList<JournalLine>? After(JournalPlace place)
    {
        if (place.Offset > file.Length || Last is null)
        {
            return null;
        }

        byte[] bytes = new byte[file.Length - place.Offset];
        file.Position = place.Offset;
        file.ReadExactly(bytes);
        JournalScan scan = JournalScan.Of(bytes, place);
        return scan.IsWhole && scan.Last?.Sha == Last.Sha ? scan.Lines : null;
    }

    /// <summary>Adds a line; when this returns, the disk has it, and when it throws, the journal is as before.</summary>
    /// <exception cref="IOException">It can't be written.</exception>
    public void Append(JournalLine line)
    {
        long before = file.Length;
        try
        {
            file.Position = before;
            file.Write([.. line.Text.Span, (byte)'\n']);
            DiskSync.Of(file);
        }
        catch
        {
            file.SetLength(before);
            throw;
        }

        Last = line;
        end = file.Length;
    }

    /// <summary>Takes the last line off, where the database could not take it.</summary>
    /// <param name="length">The length before it.</param>
    /// <param name="last">The line before it.</param>
    public void TakeBack(long length, JournalLine? last)
    {
        file.SetLength(length);
        end = length;
        DiskSync.Of(file);
        Last = last;
    }

    /// <inheritdoc/>
    public void Dispose() => file.Dispose();

    private static JournalFile? Sound(FileStream file)
    {
        var journal = new JournalFile(file);
        if (file.Length == 0 || (journal.Last = LastOf(file)) is not null)
        {
            return journal;
        }

        file.Dispose();
        return null;
    }

    // The end of the file, more of it each time until a line begins in it.
    private static JournalLine? LastOf(FileStream file)
    {
        for (long size = TailAtFirst; size / 8 <= JournalLine.Longest; size *= 8)
        {
            long from = Math.Max(0, file.Length - size);
            byte[] tail = new byte[file.Length - from];
            file.Position = from;
            file.ReadExactly(tail);
            if (tail[^1] != (byte)'\n')
            {
                return null;
            }

            int start = tail.AsSpan(0, tail.Length - 1).LastIndexOf((byte)'\n') + 1;
            if (start > 0 || from == 0)
            {
                JournalLine? last = JournalLine.Read(tail.AsMemory(start, tail.Length - 1 - start));
                return last is null || last.Number < last.Of ? null : last;
            }
        }

        // No line is that long.
        return null;
    }
}
