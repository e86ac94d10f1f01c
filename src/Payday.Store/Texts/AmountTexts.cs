using System.Globalization;
using Payday.Core.Amounts;

namespace Payday.Store.Texts;

/// <summary>What is said of a typed text that is no amount.</summary>
public static class AmountTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(AmountFault fault) => fault switch
    {
        AmountFault.Missing => "An amount is missing.",
        AmountFault.TooLong => "That is too long for an amount.",
        AmountFault.ControlCharacters => "An amount can't hold control characters such as a line break.",
        AmountFault.SignAlone => "There is no amount after the sign.",
        AmountFault.SumUnfinished => "The sum has a + or - without an amount beside it.",
        AmountFault.NotAnAmount not => $"'{Echo.Of(not.Text)}' is not an amount; write it like {Sample(not.Currency, not.Style)}.",
        AmountFault.TooManyDecimals { Currency: { Decimals: 0 } currency, Style: var style } => $"{currency.Code} has no decimals; write it like {Sample(currency, style)}.",
        AmountFault.TooManyDecimals { Currency: var currency, Style: var style } => string.Create(
            CultureInfo.InvariantCulture, $"{currency.Code} has at most {currency.Decimals} decimals; write it like {Sample(currency, style)}."),
        AmountFault.TooLarge => "The amount is too large; look at its digits.",
        AmountFault.SumTooLarge => "The sum is too large; look at its digits.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Sample(Currency currency, NumberStyle style) =>
        currency.Decimals == 0 ? "1234" : $"12{style.DecimalMark}{new string('5', currency.Decimals)}";
}
