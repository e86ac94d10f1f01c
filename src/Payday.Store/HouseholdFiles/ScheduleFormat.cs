using System.Text.Json;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>A schedule: an object whose <c>kind</c> says which other fields it has.</summary>
public static class ScheduleFormat
{
    private const int MostWeeks = 520;
    private const int MostMonths = 120;
    private const int MostDates = 500;

    private static readonly string[] Kinds =
        ["weekly", "fortnightly", "everyWeeks", "twiceMonthly", "monthly", "everyMonths", "yearly", "dates"];

    /// <summary>Reads a schedule.</summary>
    public static Schedule Read(JsonCursor schedule)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        JsonFields fields = schedule.Fields();
        Schedule? read = fields.Required("kind").Word(Kinds) switch
        {
            "weekly" => new Schedule.EveryWeeks(1, Anchor(fields)),
            "fortnightly" => new Schedule.EveryWeeks(2, Anchor(fields)),
            "everyWeeks" => new Schedule.EveryWeeks(fields.Required("weeks").Count(1, MostWeeks), Anchor(fields)),
            "twiceMonthly" => ReadTwice(fields.Required("days")),
            "monthly" => new Schedule.Monthly(MonthDayFormat.Read(fields.Required("day"))),
            "everyMonths" => new Schedule.EveryMonths(fields.Required("months").Count(1, MostMonths), Anchor(fields)),
            "yearly" => new Schedule.EveryMonths(12, Anchor(fields)),
            "dates" => new Schedule.OnDates(fields.Required("dates").Dates(MostDates)),
            _ => null,
        };

        // Of an unknown kind nothing is known about the other fields either.
        if (read is not null)
        {
            fields.RefuseOthers();
        }

        return read ?? new Schedule.OnDates([]);
    }

    /// <summary>Writes a schedule as a field.</summary>
    public static void Write(Utf8JsonWriter json, string name, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject(name);
        switch (schedule)
        {
            case Schedule.EveryWeeks { Weeks: 1 or 2 } weeks:
                json.WriteString("kind", weeks.Weeks == 1 ? "weekly" : "fortnightly");
                json.WriteDate("anchor", weeks.Anchor);
                break;
            case Schedule.EveryWeeks weeks:
                json.WriteString("kind", "everyWeeks");
                json.WriteNumber("weeks", weeks.Weeks);
                json.WriteDate("anchor", weeks.Anchor);
                break;
            case Schedule.TwiceMonthly twice:
                json.WriteString("kind", "twiceMonthly");
                json.WriteStartArray("days");
                MonthDayFormat.Write(json, twice.First);
                MonthDayFormat.Write(json, twice.Second);
                json.WriteEndArray();
                break;
            case Schedule.Monthly monthly:
                json.WriteString("kind", "monthly");
                MonthDayFormat.Write(json, "day", monthly.Day);
                break;
            case Schedule.EveryMonths { Months: 12 } yearly:
                json.WriteString("kind", "yearly");
                json.WriteDate("anchor", yearly.Anchor);
                break;
            case Schedule.EveryMonths months:
                json.WriteString("kind", "everyMonths");
                json.WriteNumber("months", months.Months);
                json.WriteDate("anchor", months.Anchor);
                break;
            case Schedule.OnDates dates:
                json.WriteString("kind", "dates");
                json.WriteDates("dates", dates.Dates);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(schedule));
        }

        json.WriteEndObject();
    }

    private static LocalDate Anchor(JsonFields fields) => fields.Required("anchor").Date();

    private static Schedule.TwiceMonthly ReadTwice(JsonCursor days)
    {
        MonthDay[] read = [.. days.Items(2).Select(MonthDayFormat.Read)];
        if (days.IsSound && (read.Length < 2 || read[0] == read[1]))
        {
            days.Refuse("Two different days belong here, such as [15, \"last\"].");
        }

        return read.Length == 2
            ? new Schedule.TwiceMonthly(read[0], read[1])
            : new Schedule.TwiceMonthly(new MonthDay.Numbered(15), new MonthDay.Last());
    }
}
