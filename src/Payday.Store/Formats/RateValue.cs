using System.Globalization;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A fraction in quotes, such as <c>"0.1999"</c> for 19.99 %.</summary>
public sealed class RateValue : FileValue<decimal?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Fraction();

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Fraction();

    /// <inheritdoc/>
    public override decimal? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        if (FileValues.IsUnquoted(at) || !at.Is(JsonValueKind.String, Wanted(reading)))
        {
            return null;
        }

        if (decimal.TryParse(at.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal fraction))
        {
            return fraction;
        }

        at.Refuse(new JsonTextFault.NotAFraction(at.Text));
        return null;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, decimal? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStringValue(value!.Value.ToString("0.############################", CultureInfo.InvariantCulture));
    }
}
