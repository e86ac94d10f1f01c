using System.Text.Json;
using Payday.Store.Contents;

namespace Payday.Store.Journals;

/// <summary>Reads the fields of a line without what it does, which is most of it.</summary>
internal static class JournalLineReader
{
    public static JournalLine? Read(ReadOnlyMemory<byte> text, string sha)
    {
        long version = 0;
        long number = 0;
        long of = 0;
        string at = "";
        string previous = "";
        string digest = "";
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
                    case "at":
                        at = json.GetString() ?? "";
                        break;
                    case "prev":
                        previous = json.GetString() ?? "";
                        break;
                    case "digest":
                        digest = json.GetString() ?? "";
                        break;
                    default:
                        json.Skip();
                        break;
                }
            }
        }
        catch (Exception fault) when (fault is JsonException or FormatException or InvalidOperationException)
        {
            return null;
        }

        if (version > BookStore.SchemaVersion)
        {
            throw new StoreException("The journal was written by a newer Payday. Nothing was changed; use that version, or another folder with --data.");
        }

        return Digest.TryParse(digest, out Digest after) ? JournalLine.Known(text, sha, number, of, at, previous, after) : null;
    }
}
