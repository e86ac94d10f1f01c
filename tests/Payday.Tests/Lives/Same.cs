using System.Text.Json.Nodes;

namespace Payday.Tests.Lives;

/// <summary>Holds an answer against what the model says, field by field.</summary>
internal static class Same
{
    // Words and notes: what they must hold to is checked apart.
    private static readonly string[] Words = ["why", "notes", "needsDoing", "withdrawal", "version"];

    /// <summary>Every difference, a line each with its path.</summary>
    /// <param name="expected">What the model says.</param>
    /// <param name="actual">The answer; a field that the model doesn't know is a difference too.</param>
    public static IEnumerable<string> Differences(JsonNode? expected, JsonNode? actual, string path = "") => (expected, actual) switch
    {
        (JsonObject want, JsonObject got) => want.Select(field => field.Key).Union(got.Select(field => field.Key))
            .Where(name => !Words.Contains(name))
            .SelectMany(name => want.ContainsKey(name) ? Differences(want[name], got[name], $"{path}.{name}") : [$"{path}.{name}: {got[name]?.ToJsonString()}, which the model doesn't know"]),
        (JsonArray want, JsonArray got) when want.Count == got.Count => want.Zip(got).SelectMany((pair, i) => Differences(pair.First, pair.Second, $"{path}[{Name(pair.First, i)}]")),
        (JsonArray want, JsonArray got) => [$"{path}: {got.Count} rows, the model has {want.Count}: {string.Join(' ', Only(got, want))} | {string.Join(' ', Only(want, got))}"],
        _ => expected?.ToJsonString() == actual?.ToJsonString() ? [] : [$"{path}: {actual?.ToJsonString() ?? "nothing"}, the model has {expected?.ToJsonString() ?? "nothing"}"],
    };

    private static string Name(JsonNode? row, int i) =>
        row is JsonObject fields && (fields["name"] ?? fields["pot"] ?? fields["bill"] ?? fields["month"] ?? fields["date"]) is { } name ? (string)name! : $"{i}";

    private static IEnumerable<string> Only(JsonArray these, JsonArray those)
    {
        HashSet<string> known = [.. those.Select(row => row!.ToJsonString())];
        return these.Select(row => row!.ToJsonString()).Where(row => !known.Contains(row)).Take(4);
    }
}
