using System.Text.Json;
using LiteDB;
using Payday.Store.Edits;

namespace Payday.Store.Journals;

/// <summary>What a line does, in JSON: <c>{"put":COLLECTION,"doc":{…}}</c> or <c>{"del":COLLECTION,"id":…}</c>.</summary>
internal static class JournalEdits
{
    public static void Write(Utf8JsonWriter json, IEnumerable<Edit> edits)
    {
        json.WriteStartArray("edits");
        foreach (Edit edit in edits)
        {
            json.WriteStartObject();
            json.WriteString(edit.Document is null ? "del" : "put", edit.Collection);
            json.WritePropertyName(edit.Document is null ? "id" : "doc");
            DocumentJson.Write(json, edit.Document ?? edit.Id);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static List<Edit> Read(ReadOnlyMemory<byte> line)
    {
        using JsonDocument json = JsonDocument.Parse(line);
        return [.. json.RootElement.GetProperty("edits").EnumerateArray().Select(Edit)];
    }

    private static Edit Edit(JsonElement json)
    {
        if (json.TryGetProperty("put", out JsonElement into))
        {
            BsonDocument document = DocumentJson.Document(json.GetProperty("doc"));
            return new Edit(into.GetString()!, document["_id"], document);
        }

        return new Edit(json.GetProperty("del").GetString()!, DocumentJson.Read(json.GetProperty("id")), null);
    }
}
