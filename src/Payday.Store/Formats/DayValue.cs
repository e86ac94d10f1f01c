using System.Text.Json;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>
/// A day of the month: <c>15</c>, <c>"last"</c>, <c>"lastWorkingDay"</c>, <c>"firstWorkingDay"</c> or <c>{"nth":2,"weekday":"Friday"}</c>; the last
/// one of the month is <c>5</c>, or <c>"last"</c>.
/// </summary>
public sealed class DayValue : FileValue<MonthDay?>
{
    private const string Nth = "nth";
    private const string Weekday = "weekday";

    private static readonly JsonWanted.Count Day = new(1, MonthDay.LastDay);
    private static readonly JsonWanted.Count Which = new(1, MonthDay.LastNth);
    private static readonly WordValue<DayWord> Named = new(Words.DayWords);
    private static readonly WordValue<IsoDayOfWeek> Weekdays = new(Words.Weekdays);

    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Either(
    [
        new FileShape.Count(Day.Least, Day.Most), Named.Shape,
        new FileShape.Object([(Nth, new FileShape.Either([new FileShape.Count(Which.Least, Which.Most), new FileShape.Word(["last"])])), (Weekday, Weekdays.Shape)]),
    ]);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => Day;

    /// <inheritdoc/>
    public override MonthDay? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        switch (at.Kind)
        {
            case JsonValueKind.Object:
                return ReadNth(at.Fields(), reading);
            case JsonValueKind.String:
                return Named.Read(at, reading) switch
                {
                    DayWord.Last => new MonthDay.Last(),
                    DayWord.LastWorkingDay => new MonthDay.LastWorkingDay(),
                    DayWord.FirstWorkingDay => new MonthDay.FirstWorkingDay(),
                    _ => null,
                };
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
                Named.Write(json, DayWord.Last, currency);
                break;
            case MonthDay.LastWorkingDay:
                Named.Write(json, DayWord.LastWorkingDay, currency);
                break;
            case MonthDay.FirstWorkingDay:
                Named.Write(json, DayWord.FirstWorkingDay, currency);
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
        int? nth = fields.Find(Nth) is { } which ? which.Kind == JsonValueKind.String && which.Text == "last" ? MonthDay.LastNth : Count(which, Which) : fields.Missing<int?>(Nth, Which);
        IsoDayOfWeek? weekday = fields.Find(Weekday) is { } day ? Weekdays.Read(day, reading) : fields.Missing<IsoDayOfWeek?>(Weekday, Weekdays.Wanted(reading));
        fields.RefuseOthers();
        return nth is null || weekday is null ? null : new MonthDay.NthWeekday(nth.Value, weekday.Value);
    }

    private static int? Count(JsonCursor at, JsonWanted.Count wanted)
    {
        if (!at.Is(JsonValueKind.Number, wanted))
        {
            return null;
        }

        if (at.Int is { } number && number >= wanted.Least && number <= wanted.Most)
        {
            return number;
        }

        at.Refuse(new JsonTextFault.NotACount(at.Raw, wanted.Least, wanted.Most));
        return null;
    }
}
