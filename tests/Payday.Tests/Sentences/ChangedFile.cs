using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Payday.Tests.Sentences;

/// <summary>A JSON file with something else in it.</summary>
internal static partial class ChangedFile
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The file after changes such as <c>pots[0].amount = "1"</c>, joined by <c> &amp; </c>; a place alone is taken out.</summary>
    public static string Of(string file, string change)
    {
        JsonNode root = JsonNode.Parse(file)!;
        foreach (string one in change.Split(" & "))
        {
            string[] parts = one.Split(" = ", 2);
            string[] steps = [.. Step().Matches(parts[0]).Select(step => step.Value)];
            JsonNode at = steps[..^1].Aggregate(root, (node, step) => step[0] == '[' ? node[Index(step)]! : node[step]!);
            JsonNode? value = parts.Length == 1 ? null : JsonNode.Parse(parts[1]);
            switch (at)
            {
                case JsonArray list:
                    list[Index(steps[^1])] = value;
                    break;
                case JsonObject fields when parts.Length == 1:
                    Assert.True(fields.Remove(steps[^1]), one);
                    break;
                default:
                    at[Regex.Unescape(steps[^1])] = value;
                    break;
            }
        }

        return root.ToJsonString(Indented);
    }

    private static int Index(string step) => int.Parse(step.Trim('[', ']'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\[\d+\]|[^.\[\]]+")]
    private static partial Regex Step();
}
