using System.Globalization;

namespace Payday.Core.Amounts;

/// <summary>Reads amounts and sums of amounts that a person typed. The marks are those of the stated style.</summary>
internal static class AmountReader
{
    // Longer input is refused unread: no amount of 64 bits needs it, and a paste can be anything.
    private const int LongestText = 200;

    /// <inheritdoc cref="Money.Parse"/>
    public static Read<Money> Amount(string? text, Currency currency, NumberStyle style)
    {
        ReadOnlySpan<char> rest = text.AsSpan().Trim(' ');
        if (Unreadable(rest) is { } fault)
        {
            return Read.Refused<Money>(fault);
        }

        bool negative = rest[0] == '-';
        if (rest[0] is '-' or '+')
        {
            rest = rest[1..];
        }

        Read<Money> size = Unsigned(rest, currency, style);
        return size.Ok && negative ? Read.Of(-size.Value) : size;
    }

    /// <inheritdoc cref="Money.ParseSum"/>
    public static Read<Money> Sum(string? text, Currency currency, NumberStyle style)
    {
        ReadOnlySpan<char> rest = text.AsSpan().Trim(' ');
        if (Unreadable(rest) is { } fault)
        {
            return Read.Refused<Money>(fault);
        }

        Int128 sum = 0;
        bool negative = false;
        if (rest[0] is '-' or '+')
        {
            negative = rest[0] == '-';
            rest = rest[1..];
        }

        while (true)
        {
            int next = rest.IndexOfAny('+', '-');
            Read<Money> part = Unsigned((next < 0 ? rest : rest[..next]).Trim(' '), currency, style);
            if (!part.Ok)
            {
                return part;
            }

            sum += negative ? -(Int128)part.Value.MinorUnits : part.Value.MinorUnits;
            if (next < 0)
            {
                return sum >= long.MinValue && sum <= long.MaxValue
                    ? Read.Of(Money.FromMinorUnits((long)sum, currency))
                    : Read.Refused<Money>("The sum is too large.");
            }

            negative = rest[next] == '-';
            rest = rest[(next + 1)..];
        }
    }

    private static string? Unreadable(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
        {
            return "An amount is missing.";
        }

        if (text.Length > LongestText)
        {
            return "That is too long for an amount.";
        }

        foreach (char c in text)
        {
            if (char.IsControl(c))
            {
                return "An amount can't hold control characters such as a line break.";
            }
        }

        return null;
    }

    private static Read<Money> Unsigned(ReadOnlySpan<char> text, Currency currency, NumberStyle style)
    {
        int point = text.IndexOf(style.DecimalMark, StringComparison.Ordinal);
        ReadOnlySpan<char> whole = point < 0 ? text : text[..point];
        ReadOnlySpan<char> fraction = point < 0 ? [] : text[(point + style.DecimalMark.Length)..];
        if (fraction.Length > currency.Decimals && IsDigits(fraction))
        {
            return Read.Refused<Money>(currency.Decimals == 0
                ? $"{currency.Code} has no decimals."
                : string.Create(CultureInfo.InvariantCulture, $"{currency.Code} has at most {currency.Decimals} decimals."));
        }

        string? digits = WithoutGroupMarks(whole, style);
        bool bothEmpty = digits is { Length: 0 } && fraction.IsEmpty;
        if (digits is null || bothEmpty || !IsDigits(digits) || !IsDigits(fraction) || (point >= 0 && fraction.IsEmpty))
        {
            return Read.Refused<Money>($"'{new string(text)}' is not an amount; write it like {SampleOf(currency, style)}.");
        }

        Int128 minor = 0;
        foreach (char c in digits + fraction.ToString().PadRight(currency.Decimals, '0'))
        {
            minor = (minor * 10) + (c - '0');
            if (minor > long.MaxValue)
            {
                return Read.Refused<Money>("The amount is too large.");
            }
        }

        return Read.Of(Money.FromMinorUnits((long)minor, currency));
    }

    // Group marks may be left out, but where they stand they stand before groups of three: "1,23" with a
    // decimal comma meant is refused rather than read as 123.
    private static string? WithoutGroupMarks(ReadOnlySpan<char> whole, NumberStyle style)
    {
        if (style.GroupMark.Length == 0 || !whole.Contains(style.GroupMark, StringComparison.Ordinal))
        {
            return whole.ToString();
        }

        string[] groups = whole.ToString().Split(style.GroupMark);
        return groups[0].Length is >= 1 and <= 3 && groups.Skip(1).All(group => group.Length == 3)
            ? string.Concat(groups)
            : null;
    }

    private static bool IsDigits(ReadOnlySpan<char> text) => !text.ContainsAnyExceptInRange('0', '9');

    private static string SampleOf(Currency currency, NumberStyle style) =>
        currency.Decimals == 0 ? "1234" : $"12{style.DecimalMark}{new string('5', currency.Decimals)}";
}
