using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Store.Json;

public sealed partial class JsonCursor
{
    /// <summary>An amount in quotes, zero or more, with at most the currency's decimals.</summary>
    /// <remarks>A number without quotes is refused: other programs may round it in passing.</remarks>
    public Money Amount(Currency currency)
    {
        if (IsUnquoted() || !Is(JsonValueKind.String, $"an amount in quotes, such as \"{Sample(currency)}\""))
        {
            return Money.Zero(currency);
        }

        Result<Money> amount = AmountIn(Text, currency);
        if (amount.Ok && !amount.Value.IsNegative)
        {
            return amount.Value;
        }

        Refuse(amount.Fault ?? "This amount is below zero; write zero or more.");
        return Money.Zero(currency);
    }

    /// <summary>An amount in quotes, above zero, with at most the currency's decimals.</summary>
    /// <inheritdoc cref="Amount"/>
    public Money AmountAboveZero(Currency currency)
    {
        Money amount = Amount(currency);
        if (amount.IsZero && IsSound)
        {
            Refuse("This amount is zero; write one above zero.");
        }

        return amount;
    }

    /// <summary>Reads an amount as files hold it, and says so where it names a currency.</summary>
    public static Result<Money> AmountIn(string text, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (CurrencyNamedIn(text) is { } named)
        {
            return Result.Refused<Money>(named == currency.Code
                ? $"\"{SafeText.Shown(text)}\" names the currency; write the number alone."
                : $"\"{SafeText.Shown(text)}\" is in {named} and the rest in {currency.Code}, and two currencies can't mix; convert it and write the number alone.");
        }

        Result<Money> amount = Money.ParsePlain(text, currency);
        return amount.Ok || SafeText.FirstHarmful(text) is null
            ? amount
            : Result.Refused<Money>($"\"{SafeText.Shown(text)}\" is not an amount; write it like {Sample(currency)}.");
    }

    private static string? CurrencyNamedIn(string text) =>
        Currency.KnownCodes.FirstOrDefault(code => text.Contains(code, StringComparison.OrdinalIgnoreCase));

    private static string Sample(Currency currency) => Money.FromUnits(45, currency).ToPlain();
}
