using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>The code of the currency of every amount; what is read after it is read in it.</summary>
public sealed class CurrencyValue : FileValue<Currency?>
{
    private static readonly WordValue<Currency> Codes =
        new(new JsonChoices<Currency>([.. Currency.KnownCodes.Select(code => (code, Currency.FromCode(code)))]));

    /// <inheritdoc/>
    public override FileShape Shape => Codes.Shape;

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => Codes.Wanted(reading);

    /// <inheritdoc/>
    public override Currency? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        Currency? currency = Codes.Read(at, reading);
        reading.Currency = currency ?? reading.Currency;
        return currency;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, Currency? value, Currency currency) => Codes.Write(json, value, currency);
}
