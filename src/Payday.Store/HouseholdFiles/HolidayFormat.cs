using System.Text.Json;
using Payday.Core.Calendar;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Bank holidays: <c>"US"</c>, or <c>{"set":"US","extra":["2026-11-27"]}</c>.</summary>
public static class HolidayFormat
{
    private const int MostDates = 500;

    /// <summary>Reads a rule set, or an object with a rule set and further dates.</summary>
    public static HolidayRules Read(JsonCursor holidays)
    {
        ArgumentNullException.ThrowIfNull(holidays);
        if (holidays.Kind != JsonValueKind.Object)
        {
            return new HolidayRules(holidays.OneOf(Words.HolidaySets), []);
        }

        JsonFields fields = holidays.Fields();
        var rules = new HolidayRules(
            fields.Required("set").OneOf(Words.HolidaySets),
            fields.Optional("extra")?.Dates(MostDates) ?? []);
        fields.RefuseOthers();
        return rules;
    }

    /// <summary>Reads a rule set or a plain list of dates, as the paydays calculator takes them.</summary>
    public static HolidayRules ReadSetOrDates(JsonCursor holidays)
    {
        ArgumentNullException.ThrowIfNull(holidays);
        return holidays.Kind == JsonValueKind.Array
            ? new HolidayRules(HolidaySet.None, holidays.Dates(MostDates))
            : new HolidayRules(holidays.OneOf(Words.HolidaySets), []);
    }

    /// <summary>Writes the rules as a field, as short as they can be.</summary>
    public static void Write(Utf8JsonWriter json, string name, HolidayRules rules)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(rules);
        string set = Words.HolidaySets.WordFor(rules.Set);
        if (rules.Extra.IsEmpty)
        {
            json.WriteString(name, set);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("set", set);
        json.WriteDates("extra", rules.Extra);
        json.WriteEndObject();
    }
}
