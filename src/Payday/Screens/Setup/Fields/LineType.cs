using System.Text;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Store.Json;

namespace Payday.Screens.Setup.Fields;

/// <summary>A line of text, or a few with a bar between them.</summary>
/// <param name="most">How many lines there may be.</param>
internal sealed class LineType(int most = 1) : FieldType
{
    private const int Longest = 60;

    /// <inheritdoc/>
    public override int MostTyped => most == 1 ? base.MostTyped : Shell.CellEdit.Long;

    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) =>
        value is JsonArray lines ? string.Join(" | ", lines.Select(line => line?.ToString())) : value.ToString();

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work)
    {
        string[] lines = most == 1 ? [text.Trim()] : [.. text.Split('|').Select(line => line.Trim()).Where(line => line.Length > 0)];
        if (lines.Length > most)
        {
            return Result.Refused<JsonNode>($"There are {lines.Length} lines; at most {most} are taken.");
        }

        return lines.Select(Fault).FirstOrDefault(fault => fault is not null) is { } wrong
            ? Result.Refused<JsonNode>(wrong)
            : Result.Of(most == 1 ? Text(lines[0]) : new JsonArray([.. lines.Select(Text)]));
    }

    private static string? Fault(string line)
    {
        int length = line.EnumerateRunes().Count();
        if (SafeText.FirstHarmful(line) is { } rune)
        {
            return $"There is a character in it that can't be shown (U+{rune.Value:X4}); take it out.";
        }

        return length switch
        {
            0 => "Nothing stands here; write something.",
            > Longest => $"That has {length} characters; shorten it to {Longest}.",
            _ => null,
        };
    }
}
