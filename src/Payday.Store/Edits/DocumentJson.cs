using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using LiteDB;

namespace Payday.Store.Edits;

/// <summary>The documents of the database as JSON, always the same bytes for the same document.</summary>
/// <remarks>Whole numbers have one kind here; the documents are read by value, so 32 and 64 bits are the same to them.</remarks>
internal static class DocumentJson
{
    // No document of ours goes deeper than six; a damaged one may seem to.
    private const int Deepest = 32;

    /// <summary>How journal and digest write: text as it is, for it is never part of a web page.</summary>
    public static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A document with the name of its collection before it.</summary>
    public static ReadOnlySpan<byte> Utf8(string collection, BsonDocument document)
    {
        using var bytes = new MemoryStream(256);
        bytes.Write(Encoding.UTF8.GetBytes(collection));
        bytes.WriteByte((byte)'\n');
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            Write(json, document);
        }

        return bytes.GetBuffer().AsSpan(0, (int)bytes.Length);
    }

    /// <summary>Writes a value.</summary>
    /// <exception cref="FormatException">It is of a kind that no document of ours has.</exception>
    public static void Write(Utf8JsonWriter json, BsonValue value) => Write(json, value, 0);

    /// <summary>Reads what <see cref="Write(Utf8JsonWriter, BsonValue)"/> wrote.</summary>
    /// <exception cref="FormatException">It was not written so.</exception>
    public static BsonValue Read(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => Document(json),
        JsonValueKind.Array => new BsonArray(json.EnumerateArray().Select(Read)),
        JsonValueKind.String => json.GetString(),
        JsonValueKind.Number when json.TryGetInt64(out long number) => number,
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        JsonValueKind.Null => BsonValue.Null,
        _ => throw new FormatException("A document holds a number that is not whole."),
    };

    /// <summary>Reads a document.</summary>
    public static BsonDocument Document(JsonElement json)
    {
        var document = new BsonDocument();
        foreach (JsonProperty property in json.EnumerateObject())
        {
            document[property.Name] = Read(property.Value);
        }

        return document;
    }

    private static void Write(Utf8JsonWriter json, BsonValue value, int depth)
    {
        switch (value.Type)
        {
            case BsonType.Null:
                json.WriteNullValue();
                break;
            case BsonType.Int32 or BsonType.Int64:
                json.WriteNumberValue(value.AsInt64);
                break;
            case BsonType.Boolean:
                json.WriteBooleanValue(value.AsBoolean);
                break;
            case BsonType.String:
                json.WriteStringValue(value.AsString);
                break;
            case BsonType.Array when depth < Deepest:
                json.WriteStartArray();
                foreach (BsonValue item in value.AsArray)
                {
                    Write(json, item, depth + 1);
                }

                json.WriteEndArray();
                break;
            case BsonType.Document when depth < Deepest:
                WriteDocument(json, value.AsDocument, depth);
                break;
            default:
                throw new FormatException($"A document holds a value of the kind {value.Type}.");
        }
    }

    // The id first, as LiteDB keeps it.
    private static void WriteDocument(Utf8JsonWriter json, BsonDocument document, int depth)
    {
        json.WriteStartObject();
        foreach ((string name, BsonValue value) in document.GetElements())
        {
            json.WritePropertyName(name);
            Write(json, value, depth + 1);
        }

        json.WriteEndObject();
    }
}
