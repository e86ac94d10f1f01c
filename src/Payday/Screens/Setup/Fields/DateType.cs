using System.Text.Json.Nodes;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;
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
    public override Result<JsonNode> Take(string text, SetupWork work)
    {
        Result<LocalDate> date = Date(text.Trim(), work);
        return date.Ok ? Result.Of(Text(LocalDatePattern.Iso.Format(date.Value))) : Result.Refused<JsonNode>(date.Fault);
    }

    /// <summary>Reads a date, or the word <c>today</c>.</summary>
    internal static Result<LocalDate> Date(string text, SetupWork work)
    {
        if (string.Equals(text, "today", StringComparison.OrdinalIgnoreCase))
        {
            return Result.Of(work.Today);
        }

        Result<LocalDate> date = TypedDate.Parse(text, order: DateOrders.Of(work.Currency));
        if (!date.Ok)
        {
            return date;
        }

        return date.Value.Year is < JsonCursor.FirstYear or > JsonCursor.LastYear
            ? Result.Refused<LocalDate>($"{text} is too far off; dates go from {JsonCursor.FirstYear} to {JsonCursor.LastYear}.")
            : date;
    }
}
