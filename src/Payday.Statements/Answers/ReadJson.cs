using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Payday.Statements.Answers;

/// <summary>How the answer becomes JSON; generated at build time, so that no reflection is needed.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(StatementsRead))]
internal sealed partial class ReadJson : JsonSerializerContext
{
    /// <summary>Nothing in it needs escaping for a web page.</summary>
    public static ReadJson Readable { get; } = new(new JsonSerializerOptions { PropertyNamingPolicy = JsonNamingPolicy.CamelCase, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
}
