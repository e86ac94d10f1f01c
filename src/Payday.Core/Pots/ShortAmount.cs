using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>Amounts as a reason names them.</summary>
internal static class ShortAmount
{
    /// <summary>The amount with group marks, without decimals where they are all zero, e.g. <c>1,000</c>.</summary>
    public static string Of(Money amount, NumberStyle style)
    {
        string text = amount.ToString(style);
        return amount.MinorUnits % amount.Currency.MinorPerUnit == 0 && amount.Currency.Decimals > 0
            ? text[..text.LastIndexOf(style.DecimalMark, StringComparison.Ordinal)]
            : text;
    }
}
