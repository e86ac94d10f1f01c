using System.Globalization;
using Payday.Core.Faults;

namespace Payday.Core.Amounts;

public readonly partial struct Money
{
    /// <summary>
    /// The amount with all decimals of its currency and group marks, e.g. <c>2,310.45</c>, without the code.
    /// </summary>
    /// <param name="style">How numbers are written.</param>
    public string ToString(NumberStyle style)
    {
        string digits = ToPlain();
        bool negative = digits[0] == '-';
        int start = negative ? 1 : 0;
        int point = digits.IndexOf('.', StringComparison.Ordinal);
        string whole = point < 0 ? digits[start..] : digits[start..point];
        string fraction = point < 0 ? "" : style.DecimalMark + digits[(point + 1)..];
        for (int i = whole.Length - 3; i > 0; i -= 3)
        {
            whole = whole.Insert(i, style.GroupMark);
        }

        return (negative ? "-" : "") + whole + fraction;
    }

    /// <summary>
    /// The amount as files hold it: a point before the decimals, no group marks, e.g. <c>2310.45</c>.
    /// </summary>
    public string ToPlain()
    {
        // Through Int128 because the smallest long has no opposite.
        Int128 size = Int128.Abs(MinorUnits);
        string sign = MinorUnits < 0 ? "-" : "";
        if (Currency.Decimals == 0)
        {
            return sign + size.ToString(CultureInfo.InvariantCulture);
        }

        (Int128 whole, Int128 fraction) = Int128.DivRem(size, Currency.MinorPerUnit);
        return string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}.{fraction.ToString(CultureInfo.InvariantCulture).PadLeft(Currency.Decimals, '0')}");
    }

    /// <summary>The value of a note or coin as files hold it: without decimals where it has none, <c>20</c>, but <c>0.50</c>.</summary>
    public string ToPiece() => MinorUnits % Currency.MinorPerUnit == 0
        ? (MinorUnits / Currency.MinorPerUnit).ToString(CultureInfo.InvariantCulture)
        : ToPlain();

    /// <summary>The plain amount and the code, e.g. <c>2310.45 USD</c>.</summary>
    public override string ToString() => $"{ToPlain()} {Currency.Code}";

    /// <summary>Reads an amount as a person types it.</summary>
    /// <param name="text">
    /// Digits with an optional sign, group marks of the style between groups of three, and at most the
    /// currency's decimals. Fewer decimals are filled with zeros. Blanks around it are ignored.
    /// </param>
    /// <param name="currency">The currency it is meant in.</param>
    /// <param name="style">How numbers are written.</param>
    public static Result<Money> Parse(string? text, Currency currency, NumberStyle style) =>
        AmountReader.Amount(text, currency, style);

    /// <summary>Reads an amount as files hold it: <see cref="NumberStyle.Plain"/>, all of the text.</summary>
    public static Result<Money> ParsePlain(string? text, Currency currency) =>
        AmountReader.Amount(text, currency, NumberStyle.Plain);

    /// <summary>Reads an amount or a sum of amounts as typed in a cell, e.g. <c>12.50+3-1</c>.</summary>
    /// <inheritdoc cref="Parse"/>
    public static Result<Money> ParseSum(string? text, Currency currency, NumberStyle style) =>
        AmountReader.Sum(text, currency, style);
}
