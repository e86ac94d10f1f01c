using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A date of the ISO calendar, such as <c>"2026-03-05"</c>.</summary>
public sealed class DateValue : FileValue<LocalDate?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Date();

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Date();

    /// <inheritdoc/>
    public override LocalDate? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        if (!at.Is(JsonValueKind.String, Wanted(reading)))
        {
            return null;
        }

        string text = at.Text;
        if (!TryDigits(text, out int year, out int month, out int day))
        {
            at.Refuse(new JsonTextFault.NotADate(text));
        }
        else if (!DateRule.IsNear(year))
        {
            // Of such a year there may be no such month or day either, and one fault is enough.
            at.Refuse(new JsonTextFault.DateTooFar(text));
        }
        else if (month is < 1 or > 12)
        {
            at.Refuse(new JsonTextFault.NoSuchMonth(text));
        }
        else if (CalendarSystem.Iso.GetDaysInMonth(year, month) is var days && (day < 1 || day > days))
        {
            at.Refuse(new JsonTextFault.NoSuchDay(text, year, month, days));
        }
        else
        {
            return new LocalDate(year, month, day);
        }

        return null;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, LocalDate? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStringValue(LocalDatePattern.Iso.Format(value!.Value));
    }

    private static bool TryDigits(string text, out int year, out int month, out int day)
    {
        (year, month, day) = (0, 0, 0);
        return text.Length == 10 && text[4] == '-' && text[7] == '-'
            && int.TryParse(text.AsSpan(0, 4), NumberStyles.None, CultureInfo.InvariantCulture, out year)
            && int.TryParse(text.AsSpan(5, 2), NumberStyles.None, CultureInfo.InvariantCulture, out month)
            && int.TryParse(text.AsSpan(8, 2), NumberStyles.None, CultureInfo.InvariantCulture, out day);
    }
}
