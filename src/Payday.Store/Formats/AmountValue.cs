using System.Globalization;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>An amount in quotes, such as <c>"45.00"</c>; a number without quotes is refused, as other programs may round it in passing.</summary>
/// <param name="isPiece">Whether it is the value of a note or coin, which is written without decimals where it has none: <c>"20"</c>.</param>
public sealed class AmountValue(bool isPiece = false) : FileValue<decimal?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Amount();

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new JsonWanted.Amount(reading.Currency);
    }

    /// <inheritdoc/>
    public override decimal? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        ArgumentNullException.ThrowIfNull(reading);
        return !FileValues.IsUnquoted(at) && at.Is(JsonValueKind.String, Wanted(reading)) ? In(at.Text, at, reading) : null;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, decimal? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStringValue(Text(value!.Value, currency));
    }

    /// <summary>The amount in a text of the file; null where it can't be read, which is reported.</summary>
    internal static decimal? In(string text, JsonCursor at, FileReading reading)
    {
        if (Currency.KnownCodes.FirstOrDefault(code => text.Contains(code, StringComparison.OrdinalIgnoreCase)) is { } named)
        {
            at.Refuse(new JsonTextFault.CurrencyNamed(text, named, reading.Currency));
            return null;
        }

        Result<Money> amount = Money.ParsePlain(text, reading.Currency);
        if (!amount.Ok)
        {
            at.Refuse(SafeText.FirstHarmful(text) is null ? new JsonTextFault.NotAnAmount(amount.Fault) : new JsonTextFault.HarmfulAmount(text, reading.Currency));
        }

        return amount.Ok ? amount.Value.ToDecimal() : null;
    }

    /// <summary>The amount as the file has it.</summary>
    internal string Text(decimal value, Currency currency)
    {
        int decimals = isPiece && value == decimal.Truncate(value) ? 0 : currency.Decimals;
        return value.ToString("0." + new string('0', decimals) + "##########", CultureInfo.InvariantCulture);
    }
}
