using System.Text.Json;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>
/// A day of the month: <c>15</c>, <c>"last"</c>, <c>"lastWorkingDay"</c> or <c>{"nth":2,"weekday":"Friday"}</c>.
/// </summary>
public static class MonthDayFormat
{
    private const string Last = "last";
    private const string LastWorkingDay = "lastWorkingDay";

    /// <summary>Reads a day of the month.</summary>
    public static MonthDay Read(JsonCursor day)
    {
        ArgumentNullException.ThrowIfNull(day);
        switch (day.Kind)
        {
            case JsonValueKind.Object:
                JsonFields fields = day.Fields();
                var nth = new MonthDay.NthWeekday(
                    fields.Required("nth").Count(1, 5),
                    fields.Required("weekday").OneOf(Words.Weekdays));
                fields.RefuseOthers();
                return nth;
            case JsonValueKind.String:
                return day.Word(Last, LastWorkingDay) == LastWorkingDay ? new MonthDay.LastWorkingDay() : new MonthDay.Last();
            default:
                return new MonthDay.Numbered(day.Count(1, 31));
        }
    }

    /// <summary>Writes a day of the month as a field.</summary>
    public static void Write(Utf8JsonWriter json, string name, MonthDay day)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WritePropertyName(name);
        Write(json, day);
    }

    /// <summary>Writes a day of the month as an item or after its name.</summary>
    public static void Write(Utf8JsonWriter json, MonthDay day)
    {
        ArgumentNullException.ThrowIfNull(json);
        switch (day)
        {
            case MonthDay.Numbered numbered:
                json.WriteNumberValue(numbered.Day);
                break;
            case MonthDay.Last:
                json.WriteStringValue(Last);
                break;
            case MonthDay.LastWorkingDay:
                json.WriteStringValue(LastWorkingDay);
                break;
            case MonthDay.NthWeekday nth:
                json.WriteStartObject();
                json.WriteNumber("nth", nth.Nth);
                json.WriteString("weekday", Words.Weekdays.WordFor(nth.Weekday));
                json.WriteEndObject();
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(day));
        }
    }
}
