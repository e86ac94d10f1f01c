using System.Text.Json;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A day of the month: <c>15</c>, <c>"last"</c>, <c>"lastWorkingDay"</c> or <c>{"nth":2,"weekday":"Friday"}</c>.</summary>
public sealed class DayValue : FileValue<MonthDay?>
{
    private const string Nth = "nth";
    private const string Weekday = "weekday";

    private static readonly FileWanted.Count Day = new(1, MonthDay.LastDay);
    private static readonly FileWanted.Count Which = new(1, MonthDay.LastNth);
    private static readonly WordValue<bool> Ends = new(new JsonChoices<bool>(("last", false), ("lastWorkingDay", true)));
    private static readonly WordValue<IsoDayOfWeek> Weekdays = new(Words.Weekdays);

    /// <inheritdoc/>
    public override FileWanted Wanted(FileReading reading) => Day;

    /// <inheritdoc/>
    public override MonthDay? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        switch (at.Kind)
        {
            case JsonValueKind.Object:
                return ReadNth(at.Fields(), reading);
            case JsonValueKind.String:
                bool? isWorkingDay = Ends.Read(at, reading);
                return isWorkingDay is null ? null : isWorkingDay.Value ? new MonthDay.LastWorkingDay() : new MonthDay.Last();
            default:
                return Count(at, Day) is { } day ? new MonthDay.Numbered(day) : null;
        }
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, MonthDay? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        switch (value)
        {
            case MonthDay.Numbered numbered:
                json.WriteNumberValue(numbered.Day);
                break;
            case MonthDay.Last:
                Ends.Write(json, false, currency);
                break;
            case MonthDay.LastWorkingDay:
                Ends.Write(json, true, currency);
                break;
            case MonthDay.NthWeekday nth:
                json.WriteStartObject();
                json.WriteNumber(Nth, nth.Nth);
                json.WritePropertyName(Weekday);
                Weekdays.Write(json, nth.Weekday, currency);
                json.WriteEndObject();
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(value));
        }
    }

    // A day is one or is none: what it lacks is said here, and not by the check of a draft.
    private static MonthDay.NthWeekday? ReadNth(JsonFields fields, FileReading reading)
    {
        int? nth = fields.Find(Nth) is { } which ? Count(which, Which) : fields.Missing<int?>(Nth, Which);
        IsoDayOfWeek? weekday = fields.Find(Weekday) is { } day ? Weekdays.Read(day, reading) : fields.Missing<IsoDayOfWeek?>(Weekday, Weekdays.Wanted(reading));
        fields.RefuseOthers();
        return nth is null || weekday is null ? null : new MonthDay.NthWeekday(nth.Value, weekday.Value);
    }

    private static int? Count(JsonCursor at, FileWanted.Count wanted)
    {
        if (!at.Is(JsonValueKind.Number, wanted))
        {
            return null;
        }

        if (at.Int is { } number && number >= wanted.Least && number <= wanted.Most)
        {
            return number;
        }

        at.Refuse(new FileFault.NotACount(at.Raw, wanted.Least, wanted.Most));
        return null;
    }
}
