using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Payday.Core.Households;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Screens.Setup;

/// <summary>A household between its file's text, the nodes that forms change, and what the core has.</summary>
internal static class HouseholdNodes
{
    private static readonly JsonWriterOptions Layout = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, Indented = true };

    /// <summary>The nodes of a household.</summary>
    public static JsonObject Of(Household household) => Parse(HouseholdFile.Write(household));

    /// <summary>The nodes of a text that is an object.</summary>
    public static JsonObject Parse(string text)
    {
        JsonObject root = JsonNode.Parse(text)!.AsObject();

        // The short form of the bank holidays has no place for dates of one's own.
        if (root["holidays"] is JsonValue set)
        {
            root["holidays"] = new JsonObject { ["set"] = set.DeepClone() };
        }

        return root;
    }

    /// <summary>Reads the household, with all that is wrong with it.</summary>
    public static JsonReading<Household> Read(JsonObject root) => HouseholdFile.Read(Text(root));

    /// <summary>The nodes as text.</summary>
    public static string Text(JsonObject root)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Layout))
        {
            root.WriteTo(json);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }
}
