using System.Text;
using System.Text.Json;
using Payday.Store.Edits;
using Payday.Store.Files;

namespace Payday.Store.Journals;

/// <summary>Reads the fields of a line without what it does, which is most of it: those before, and the digest behind it.</summary>
internal static class JournalLineReader
{
    private static ReadOnlySpan<byte> DigestBegins => ",\"digest\":\""u8;

    public static JournalLine? Read(ReadOnlyMemory<byte> text, string sha)
    {
        long version = 0;
        long number = 0;
        long of = 0;
        string book = BookName.None;
        string at = "";
        string previous = "";
        try
        {
            var json = new Utf8JsonReader(text.Span);
            json.Read();
            while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
            {
                string name = json.GetString()!;
                json.Read();
                switch (name)
                {
                    case "v":
                        version = json.GetInt64();
                        break;
                    case "n":
                        number = json.GetInt64();
                        break;
                    case "of":
                        of = json.GetInt64();
                        break;
                    case "book":
                        book = BookName.Of(json.GetString());
                        break;
                    case "at":
                        at = json.GetString() ?? "";
                        break;
                    case "prev":
                        previous = json.GetString() ?? "";
                        break;
                    default:
                        return version > StoreVersion.Current ? throw Newer() : DigestOf(text.Span) is { } after
                            ? JournalLine.Known(text, sha, number, of, book, at, previous, after)
                            : null;
                }
            }
        }
        catch (Exception fault) when (fault is JsonException or FormatException or InvalidOperationException)
        {
            return null;
        }

        return version > StoreVersion.Current ? throw Newer() : null;
    }

    // Right before the hash, which is right: so it is what was written, and it was written there.
    private static Digest? DigestOf(ReadOnlySpan<byte> line)
    {
        int digits = Digest.Length * 2;
        ReadOnlySpan<byte> before = line[..^JournalLine.EndLength];
        return before.Length > digits + 1
            && before[^1] == (byte)'"'
            && before[..^(digits + 1)].EndsWith(DigestBegins)
            && Digest.TryParse(Encoding.ASCII.GetString(before[^(digits + 1)..^1]), out Digest digest)
            ? digest
            : null;
    }

    private static StoreException Newer() => new(new JournalFault.Newer());
}
