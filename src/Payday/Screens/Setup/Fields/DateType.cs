using System.Text.Json.Nodes;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Store.Json;
using Payday.Text;

namespace Payday.Screens.Setup.Fields;

/// <summary>A date, typed like 2026-03-05 or 5 Mar 2026.</summary>
internal sealed class DateType : FieldType
{
    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) =>
        LocalDatePattern.Iso.Parse(value.ToString()) is { Success: true } date ? DateText.Long(date.Value) : value.ToString();

    /// <inheritdoc/>
    public override string Typed(JsonNode value, SetupWork work) => value.ToString();

    /// <inheritdoc/>
    public override Read<JsonNode> Take(string text, SetupWork work)
    {
        Read<LocalDate> date = Date(text.Trim(), work);
        return date.Ok ? Read.Of(Text(LocalDatePattern.Iso.Format(date.Value))) : Read.Refused<JsonNode>(date.Fault);
    }

    /// <summary>Reads a date, or the word <c>today</c>.</summary>
    internal static Read<LocalDate> Date(string text, SetupWork work)
    {
        if (string.Equals(text, "today", StringComparison.OrdinalIgnoreCase))
        {
            return Read.Of(work.Today);
        }

        Read<LocalDate> date = TypedDate.Parse(text, order: DateOrders.Of(work.Currency));
        if (!date.Ok)
        {
            return date;
        }

        return date.Value.Year is < JsonCursor.FirstYear or > JsonCursor.LastYear
            ? Read.Refused<LocalDate>($"{text} is too far off; dates go from {JsonCursor.FirstYear} to {JsonCursor.LastYear}.")
            : date;
    }
}
