using System.Text.Json.Nodes;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Store.Fields;

namespace Payday.Screens.Setup.Fields;

/// <summary>Dates with blanks between them.</summary>
internal sealed class DatesType : FieldType
{
    private const int MostDates = 500;

    /// <inheritdoc/>
    public override int MostTyped => Shell.CellEdit.Long;

    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) =>
        value is JsonArray dates ? string.Join(' ', dates.Select(date => date?.ToString())) : value.ToString();

    /// <inheritdoc/>
    public override Read<JsonNode> Take(string text, SetupWork work)
    {
        // A date with its month's name has blanks in it.
        char[] between = text.Any(char.IsLetter) ? [',', ';'] : [' ', ',', ';'];
        string[] words = text.Split(between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length is 0 or > MostDates)
        {
            return Read.Refused<JsonNode>($"Write 1 to {MostDates} dates like 2026-03-05, with blanks between them, or like 5 Mar 2026, with commas.");
        }

        var dates = new SortedSet<LocalDate>();
        foreach (string word in words)
        {
            Read<LocalDate> date = DateType.Date(word, work);
            if (!date.Ok)
            {
                return Read.Refused<JsonNode>($"'{Shown(word)}': {date.Fault}");
            }

            dates.Add(date.Value);
        }

        return Read.Of<JsonNode>(new JsonArray([.. dates.Select(date => Text(LocalDatePattern.Iso.Format(date)))]));
    }
}
