using System.Collections.Immutable;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Journals;

/// <summary>A journal read whole: the lines that follow on from the first, and what comes after them.</summary>
internal sealed class JournalScan
{
    private JournalScan(ImmutableArray<JournalLine> lines, long soundLength, long length, ImmutableArray<JournalLine> loose)
    {
        Lines = lines;
        SoundLength = soundLength;
        Length = length;
        Loose = loose;
    }

    /// <summary>The most bytes of a journal that are read, packed or not: 512 MB, where 30 years of weekly paydays take 70.</summary>
    public const int MostBytes = 512 * 1024 * 1024;

    /// <summary>The sound lines, each following the one before.</summary>
    public ImmutableArray<JournalLine> Lines { get; }

    /// <summary>How many bytes they take.</summary>
    public long SoundLength { get; }

    /// <summary>How long the file is; 0 where there is none.</summary>
    public long Length { get; }

    /// <summary>Lines after them that are sound in themselves, but whose place can't be proven.</summary>
    public ImmutableArray<JournalLine> Loose { get; }

    /// <summary>The last sound line, or null.</summary>
    public JournalLine? Last => Lines.LastOrDefault();

    /// <summary>Whether all of the file is sound.</summary>
    public bool IsWhole => SoundLength == Length && HasItsBeginning;

    /// <summary>Whether the content it was begun on is all there.</summary>
    public bool HasItsBeginning => Lines.IsEmpty || Lines[0].Of <= Lines.Length;

    /// <summary>Reads a journal file; one that is missing is empty.</summary>
    /// <param name="path">The file.</param>
    /// <param name="length">How much of it, in bytes; all where not said.</param>
    /// <exception cref="StoreException">It is of a newer version, too large to be one, or no file.</exception>
    /// <exception cref="EndOfStreamException">It is shorter than that.</exception>
    public static JournalScan Read(string path, long? length = null)
    {
        FileFacts facts = FileFacts.Behind(path);
        if (facts.IsNothing)
        {
            return Of(ReadOnlyMemory<byte>.Empty);
        }

        if (!StrangeFiles.IsFile(facts.Kind))
        {
            throw new StoreException(new JournalFault.NoFile(path, facts.Kind));
        }

        if (facts.Length > MostBytes)
        {
            throw TooLarge(path, facts.Length);
        }

        if (length is null)
        {
            return Of(File.ReadAllBytes(path));
        }

        byte[] bytes = new byte[length.Value];
        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        file.ReadExactly(bytes);
        return Of(bytes);
    }

    /// <summary>That a journal is larger than any that is read.</summary>
    public static StoreException TooLarge(string path, long length) => new(new JournalFault.TooLarge(path, length, MostBytes));

    /// <summary>Reads the bytes of a journal.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="from">The place that they go on from; the beginning where not said.</param>
    public static JournalScan Of(ReadOnlyMemory<byte> bytes, JournalPlace? from = null)
    {
        var lines = ImmutableArray.CreateBuilder<JournalLine>();
        var loose = ImmutableArray.CreateBuilder<JournalLine>();
        (long number, string sha, int sound) = (from?.Number ?? 0, from?.Sha ?? JournalLine.Nothing, 0);
        for (int start = 0; start < bytes.Length;)
        {
            int length = bytes.Span[start..].IndexOf((byte)'\n');
            int end = length < 0 ? bytes.Length : start + length;
            JournalLine? line = JournalLine.Read(bytes[start..end]);
            if (length >= 0 && line is not null && sound == start && line.Follows(number, sha))
            {
                lines.Add(line);
                (number, sha, sound) = (line.Number, line.Sha, end + 1);
            }
            else if (line is not null)
            {
                loose.Add(line);
            }

            start = end + 1;
        }

        return new JournalScan(lines.ToImmutable(), sound, bytes.Length, loose.ToImmutable());
    }

    /// <summary>What the lines come to.</summary>
    /// <exception cref="JournalLineException">They don't come to what they say.</exception>
    public BookContent Content() => ContentOf(Lines);

    /// <summary>What some lines come to.</summary>
    /// <param name="lines">The lines, from the first on.</param>
    /// <exception cref="JournalLineException">They don't come to what they say.</exception>
    public static BookContent ContentOf(IEnumerable<JournalLine> lines)
    {
        var content = new BookContent();
        foreach (JournalLine line in lines)
        {
            foreach (Edit edit in line.Edits())
            {
                content.Apply(edit);
            }

            if (content.Digest != line.Digest)
            {
                throw new JournalLineException(line.Mark);
            }
        }

        return content;
    }
}
