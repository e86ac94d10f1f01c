using System.Globalization;
using System.Text.Json.Nodes;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A day of the month: 15, last, last working day, or 2nd Friday.</summary>
internal sealed class DayType : FieldType
{
    private static readonly string[] Nths = ["1st", "2nd", "3rd", "4th", "5th"];
    private static readonly string[] NthWords = ["first", "second", "third", "fourth", "fifth"];

    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) => value switch
    {
        JsonObject nth when nth["nth"]?.ToString() is [>= '1' and <= '5'] digit => $"{Nths[digit[0] - '1']} {nth["weekday"]}",
        JsonValue day when day.ToString() == "lastWorkingDay" => "last working day",
        _ => value.ToString(),
    };

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work)
    {
        string[] words = text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words switch
        {
            ["last"] or ["last", "day"] => Result.Of(Text("last")),
            ["last", "working", "day"] => Result.Of(Text("lastWorkingDay")),
            [string day] when Number(day, 31) is { } number => Result.Of<JsonNode>(JsonValue.Create(number)),
            [string nth, string weekday] when Nth(nth) is { } count && Weekday(weekday) is { } day => Result.Of<JsonNode>(new JsonObject
            {
                ["nth"] = count,
                ["weekday"] = day.ToString(),
            }),
            _ => Result.Refused<JsonNode>($"'{Shown(text)}' is no day of a month; write 1 to 31, last, last working day, or 2nd Friday."),
        };
    }

    private static int? Nth(string word)
    {
        int at = Math.Max(Array.IndexOf(Nths, word), Array.IndexOf(NthWords, word));
        return at >= 0 ? at + 1 : Number(word, Nths.Length);
    }

    private static int? Number(string word, int most) =>
        int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= most ? number : null;

    // Three letters tell the days of the week apart.
    private static IsoDayOfWeek? Weekday(string word) => word.Length < 3
        ? null
        : Enumerable.Range(1, 7).Select(day => (IsoDayOfWeek?)day)
            .FirstOrDefault(day => day!.Value.ToString().StartsWith(word, StringComparison.OrdinalIgnoreCase));
}
