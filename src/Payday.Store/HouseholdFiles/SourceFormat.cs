using System.Collections.Immutable;
using System.Text.Json;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Income sources in a household file.</summary>
internal static class SourceFormat
{
    public static ImmutableArray<IncomeSource> Read(JsonCursor list, HouseholdParts parts)
    {
        ImmutableArray<NamedItem> items = NamedList.Read(list, "source", parts);
        if (list.IsSound && items.IsEmpty)
        {
            list.Refuse("A household needs at least one income source; add who pays, and when.");
        }

        return [.. items.Select(item => Read(item, parts))];
    }

    public static void Write(Utf8JsonWriter json, ImmutableArray<IncomeSource> sources)
    {
        json.WriteStartArray("sources");
        foreach (IncomeSource source in sources)
        {
            json.WriteStartObject();
            json.WriteString("id", source.Id);
            json.WriteString("name", source.Name);
            ScheduleFormat.Write(json, "schedule", source.Schedule);
            json.WriteString("shift", Words.Shifts.WordFor(source.Shift));
            json.WriteAmount("expected", source.Expected);
            json.WriteDate("until", source.Until);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IncomeSource Read(NamedItem item, HouseholdParts parts)
    {
        JsonFields fields = item.Fields;
        var source = new IncomeSource(
            item.Id,
            item.Name,
            ScheduleFormat.Read(fields.Required("schedule")),
            fields.Required("shift").OneOf(Words.Shifts),
            fields.Required("expected").Amount(parts.Currency),
            fields.Optional("until") is { } until ? LaterDate.Read(until, parts) : null);
        fields.RefuseOthers();
        return source;
    }
}
