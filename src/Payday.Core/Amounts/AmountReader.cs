using System.Globalization;
using Payday.Core.Faults;

namespace Payday.Core.Amounts;

/// <summary>Reads amounts and sums of amounts that a person typed. The marks are those of the stated style.</summary>
internal static class AmountReader
{
    // Longer input is refused unread: no amount of 64 bits needs it, and a paste can be anything.
    private const int LongestText = 200;

    // A refusal repeats what was typed, but only so much of it as leaves the sentence readable.
    private const int LongestEcho = 24;

    /// <inheritdoc cref="Money.Parse"/>
    public static Result<Money> Amount(string? text, Currency currency, NumberStyle style)
    {
        ReadOnlySpan<char> rest = WithPlainMarks(text).AsSpan().Trim(' ');
        if (Unreadable(rest) is { } fault)
        {
            return Result.Refused<Money>(fault);
        }

        bool negative = TakeSign(ref rest);
        if (rest.IsEmpty)
        {
            return Result.Refused<Money>("There is no amount after the sign.");
        }

        Result<Int128> size = Size(rest, currency, style);
        return size.Ok
            ? InRange(negative ? -size.Value : size.Value, currency, "The amount is too large; look at its digits.")
            : Result.Refused<Money>(size.Fault);
    }

    /// <inheritdoc cref="Money.ParseSum"/>
    public static Result<Money> Sum(string? text, Currency currency, NumberStyle style)
    {
        ReadOnlySpan<char> rest = WithPlainMarks(text).AsSpan().Trim(' ');
        if (Unreadable(rest) is { } fault)
        {
            return Result.Refused<Money>(fault);
        }

        Int128 sum = 0;
        bool negative = TakeSign(ref rest);
        while (true)
        {
            int next = rest.IndexOfAny('+', '-');
            ReadOnlySpan<char> part = (next < 0 ? rest : rest[..next]).Trim(' ');
            if (part.IsEmpty)
            {
                return Result.Refused<Money>("The sum has a + or - without an amount beside it.");
            }

            Result<Int128> size = Size(part, currency, style);
            if (!size.Ok)
            {
                return Result.Refused<Money>(size.Fault);
            }

            sum += negative ? -size.Value : size.Value;
            if (next < 0)
            {
                return InRange(sum, currency, "The sum is too large; look at its digits.");
            }

            negative = rest[next] == '-';
            rest = rest[(next + 1)..];
        }
    }

    // What a statement or a phone puts in place of a blank, an apostrophe and a minus means the same.
    private static string? WithPlainMarks(string? text) =>
        text?.Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace('\u2019', '\'').Replace('\u2212', '-');

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
            // Format characters too: a refusal repeats the text, and they can turn a line of the screen round.
            if (char.GetUnicodeCategory(c) is UnicodeCategory.Control or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate)
            {
                return "An amount can't hold control characters such as a line break.";
            }
        }

        return null;
    }

    private static bool TakeSign(ref ReadOnlySpan<char> text)
    {
        bool negative = text[0] == '-';
        if (text[0] is '-' or '+')
        {
            text = text[1..];
        }

        return negative;
    }

    // In minor units, up to the size of the smallest long, which is one more than that of the largest.
    private static Result<Int128> Size(ReadOnlySpan<char> text, Currency currency, NumberStyle style)
    {
        int point = text.IndexOf(style.DecimalMark, StringComparison.Ordinal);
        ReadOnlySpan<char> whole = point < 0 ? text : text[..point];
        ReadOnlySpan<char> fraction = point < 0 ? [] : text[(point + style.DecimalMark.Length)..];
        string? digits = WithoutGroupMarks(whole, style);
        bool bothEmpty = digits is { Length: 0 } && fraction.IsEmpty;
        if (digits is null || bothEmpty || !IsDigits(digits) || !IsDigits(fraction) || (point >= 0 && fraction.IsEmpty))
        {
            return Result.Refused<Int128>($"'{Echo(text)}' is not an amount; write it like {SampleOf(currency, style)}.");
        }

        if (fraction.Length > currency.Decimals)
        {
            return Result.Refused<Int128>(currency.Decimals == 0
                ? $"{currency.Code} has no decimals; write it like {SampleOf(currency, style)}."
                : string.Create(CultureInfo.InvariantCulture, $"{currency.Code} has at most {currency.Decimals} decimals; write it like {SampleOf(currency, style)}."));
        }

        Int128 minor = 0;
        foreach (char c in digits + fraction.ToString().PadRight(currency.Decimals, '0'))
        {
            minor = (minor * 10) + (c - '0');
            if (minor > -(Int128)long.MinValue)
            {
                return Result.Refused<Int128>("The amount is too large; look at its digits.");
            }
        }

        return Result.Of(minor);
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

    private static Result<Money> InRange(Int128 minor, Currency currency, string otherwise) =>
        minor >= long.MinValue && minor <= long.MaxValue
            ? Result.Of(Money.FromMinorUnits((long)minor, currency))
            : Result.Refused<Money>(otherwise);

    private static bool IsDigits(ReadOnlySpan<char> text) => !text.ContainsAnyExceptInRange('0', '9');

    private static string Echo(ReadOnlySpan<char> text) =>
        text.Length <= LongestEcho ? text.ToString() : $"{text[..LongestEcho]}...";

    private static string SampleOf(Currency currency, NumberStyle style) =>
        currency.Decimals == 0 ? "1234" : $"12{style.DecimalMark}{new string('5', currency.Decimals)}";
}
