using System.Globalization;
using System.Text;
using System.Text.Json;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Hashing;

namespace Payday.Store.Journals;

/// <summary>One change as the journal holds it: a line of JSON that proves itself and names the line before it.</summary>
/// <remarks>
/// <c>{"v":3,"n":12,"at":"2026-03-06T10:11:12Z","prev":"…","edits":[…],"digest":"…","sha":"…"}</c>: <c>sha</c> is the SHA-256 of
/// all before it in the line, <c>prev</c> that of the line before (zeros in the first), <c>digest</c> the one over all
/// documents once the line is done. The first lines of a journal that was begun on a store with content carry
/// <c>"of"</c>, how many lines that content takes. <c>"book"</c> says which book it is (<see cref="BookName"/>); lines of
/// before there were such names have none, and the next line of their journal gives one. The time is told to people and decides nothing: clocks go wrong.
/// </remarks>
internal sealed class JournalLine
{
    /// <summary>What the first line names as the one before it.</summary>
    public static readonly string Nothing = new('0', Sha256.Length * 2);

    /// <summary>How many bytes the hash with its name takes at the end of a line.</summary>
    public const int EndLength = 74;

    /// <summary>How many bytes a line may have: the database keeps the last one in a document, which may have 16 MB.</summary>
    public const int Longest = 12_000_000;

    private const string EndBegins = ",\"sha\":\"";

    private JournalLine(ReadOnlyMemory<byte> text) => Text = text;

    /// <summary>The line, without the line break.</summary>
    public ReadOnlyMemory<byte> Text { get; }

    /// <summary>Its number, from 1.</summary>
    public long Number { get; private init; }

    /// <summary>How many lines the content takes on which the journal was begun; 0 on a line that is a change.</summary>
    public long Of { get; private init; }

    /// <summary>Which book it is of, see <see cref="BookName"/>; empty where it was written before books had names.</summary>
    public string Book { get; private init; } = BookName.None;

    /// <summary>When it was written, as the clock had it.</summary>
    public string At { get; private init; } = "";

    /// <summary>The hash of the line before.</summary>
    public string Previous { get; private init; } = Nothing;

    /// <summary>Its hash.</summary>
    public string Sha { get; private init; } = Nothing;

    /// <summary>The digest over all documents once it is done.</summary>
    public Digest Digest { get; private init; }

    /// <summary>Makes the line of a change.</summary>
    /// <param name="before">The line before it, or null where there is none.</param>
    /// <param name="edits">What it does.</param>
    /// <param name="after">The digest once it is done.</param>
    /// <param name="at">When.</param>
    /// <param name="book">Which book it is of.</param>
    /// <param name="of">How many lines the content takes, or 0.</param>
    public static JournalLine Make(JournalLine? before, IEnumerable<Edit> edits, Digest after, DateTimeOffset at, string book, long of = 0)
    {
        using var text = new MemoryStream();
        using (var json = new Utf8JsonWriter(text, DocumentJson.Options))
        {
            json.WriteStartObject();
            json.WriteNumber("v", StoreVersion.Current);
            json.WriteNumber("n", (before?.Number ?? 0) + 1);
            if (of > 0)
            {
                json.WriteNumber("of", of);
            }

            json.WriteString("at", at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));
            json.WriteString("prev", before?.Sha ?? Nothing);

            // Behind the fields that a program of before it looks for.
            if (book != BookName.None)
            {
                json.WriteString("book", book);
            }

            JournalEdits.Write(json, edits);
            json.WriteString("digest", after.ToString());
            json.WriteEndObject();
        }

        text.SetLength(text.Length - 1);
        string sha = Hash(text.GetBuffer().AsSpan(0, (int)text.Length));
        text.Position = text.Length;
        text.Write(Encoding.ASCII.GetBytes($"{EndBegins}{sha}\"}}"));
        return Read(text.ToArray()) ?? throw new InvalidOperationException("A line just made can't be read.");
    }

    /// <summary>Reads a line; null where it is not whole.</summary>
    /// <exception cref="StoreException">It is whole, and of a newer version.</exception>
    public static JournalLine? Read(ReadOnlyMemory<byte> text)
    {
        ReadOnlySpan<byte> utf8 = text.Span;
        if (utf8.Length <= EndLength || utf8[0] != (byte)'{' || utf8[^2] != (byte)'"' || utf8[^1] != (byte)'}'
            || !utf8[^EndLength..].StartsWith(Encoding.ASCII.GetBytes(EndBegins)))
        {
            return null;
        }

        string sha = Encoding.ASCII.GetString(utf8[^(EndLength - EndBegins.Length)..^2]);
        return sha == Hash(utf8[..^EndLength]) ? JournalLineReader.Read(text, sha) : null;
    }

    /// <summary>A line of which the hash is right.</summary>
    public static JournalLine Known(ReadOnlyMemory<byte> text, string sha, long number, long of, string book, string at, string previous, Digest digest) =>
        new(text) { Sha = sha, Number = number, Of = of, Book = book, At = at, Previous = previous, Digest = digest };

    /// <summary>Whether it comes right after another, or first where that is null.</summary>
    public bool Follows(JournalLine? before) => Follows(before?.Number ?? 0, before?.Sha ?? Nothing);

    /// <summary>Whether it comes right after the line with a number and a hash; 0 and <see cref="Nothing"/> for none.</summary>
    public bool Follows(long number, string sha) => Number == number + 1 && Previous == sha;

    /// <summary>What the line does.</summary>
    public IEnumerable<Edit> Edits() => JournalEdits.Read(Text);

    /// <summary>Which change it is, for a person.</summary>
    public ChangeMark Mark => new(Number, At);

    private static string Hash(ReadOnlySpan<byte> utf8) => Convert.ToHexStringLower(Sha256.Of(utf8));
}
