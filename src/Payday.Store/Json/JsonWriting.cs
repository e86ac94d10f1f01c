using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;

namespace Payday.Store.Json;

/// <summary>Writes what <see cref="JsonCursor"/> reads.</summary>
public static class JsonWriting
{
    /// <summary>Writes an amount with all decimals of its currency, e.g. <c>"45.00"</c>.</summary>
    public static void WriteAmount(this Utf8JsonWriter json, string name, Money amount)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteString(name, amount.ToPlain());
    }

    /// <summary>Writes an amount unless it is null.</summary>
    public static void WriteAmount(this Utf8JsonWriter json, string name, Money? amount)
    {
        if (amount is { } there)
        {
            json.WriteAmount(name, there);
        }
    }

    /// <summary>Writes a date of the ISO calendar, e.g. <c>"2026-03-05"</c>.</summary>
    public static void WriteDate(this Utf8JsonWriter json, string name, LocalDate date)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteString(name, LocalDatePattern.Iso.Format(date));
    }

    /// <summary>Writes a date unless it is null.</summary>
    public static void WriteDate(this Utf8JsonWriter json, string name, LocalDate? date)
    {
        if (date is { } there)
        {
            json.WriteDate(name, there);
        }
    }

    /// <summary>Writes a list of texts.</summary>
    public static void WriteTexts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(texts);
        json.WriteStartArray(name);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a list of dates in the order given.</summary>
    public static void WriteDates(this Utf8JsonWriter json, string name, ImmutableArray<LocalDate> dates) =>
        json.WriteTexts(name, dates.Select(LocalDatePattern.Iso.Format));

    /// <summary>Writes a fraction with the decimals it needs, e.g. <c>"0.1999"</c>.</summary>
    public static void WriteFraction(this Utf8JsonWriter json, string name, decimal fraction)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteString(name, fraction.ToString("0.############################", CultureInfo.InvariantCulture));
    }

    /// <summary>The value of a note or coin as files hold it: <c>20</c>, but <c>0.50</c>.</summary>
    public static string PieceText(Money piece) =>
        piece.MinorUnits % piece.Currency.MinorPerUnit == 0
            ? (piece.MinorUnits / piece.Currency.MinorPerUnit).ToString(CultureInfo.InvariantCulture)
            : piece.ToPlain();
}
