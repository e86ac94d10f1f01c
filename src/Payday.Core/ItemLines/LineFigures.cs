using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Core.ItemLines;

/// <summary>Amounts, rates and counts at the front of a line's words.</summary>
internal static class LineFigures
{
    /// <summary>Takes an amount, zero or more.</summary>
    public static decimal? Amount(this LineWords words)
    {
        if (words.IsEmpty || !AmountOf(words.Front, words.Facts).Ok)
        {
            return null;
        }

        decimal amount = AmountOf(words.Front, words.Facts).Value.ToDecimal();
        words.Drop(1);
        return amount;
    }

    /// <summary>Takes a percentage as a fraction: <c>23.49%</c> or <c>23.49 %</c>.</summary>
    public static decimal? Percent(this LineWords words)
    {
        bool isApart = words.Left > 1 && words.Now[1] == "%";
        if (words.IsEmpty || (!isApart && !words.Front.EndsWith('%')))
        {
            return null;
        }

        string plain = words.Facts.Numbers.DecimalMark == "," ? words.Front.TrimEnd('%').Replace(',', '.') : words.Front.TrimEnd('%');
        if (!decimal.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal percent))
        {
            return null;
        }

        words.Drop(isApart ? 2 : 1);
        return percent / 100;
    }

    /// <summary>Takes a whole number, in figures or as a small word.</summary>
    public static int? Count(this LineWords words)
    {
        if (words.IsEmpty)
        {
            return null;
        }

        int at = Array.IndexOf(["one", "two", "three", "four", "five", "six"], words.Front.ToLowerInvariant());
        if (at < 0 && !(words.Front.All(char.IsAsciiDigit) && words.Front.Length <= 4))
        {
            return null;
        }

        int count = at >= 0 ? at + 1 : int.Parse(words.Front, NumberStyles.None, CultureInfo.InvariantCulture);
        words.Drop(1);
        return count;
    }

    /// <summary>Takes a count of weeks or months, such as <c>every 6 months</c>, <c>2 weeks</c> or <c>6m</c>: how many, and whether they are months.</summary>
    public static (int Count, bool Months)? Rhythm(this LineWords words)
    {
        ImmutableArray<string> before = words.Now;
        words.TakeAny("every", "each");
        string front = words.Front.ToLowerInvariant();
        if (front.Length > 1 && front[^1] is 'w' or 'm' && front[..^1].All(char.IsAsciiDigit) && front.Length <= 4)
        {
            words.Now = words.Now.SetItem(0, front[..^1]).Insert(1, front[^1..]);
        }

        if (words.Count() is { } count and > 0)
        {
            if (count <= HouseholdLimits.MostWeeks && words.TakeAny("weeks", "week", "w"))
            {
                return (count, false);
            }

            if (count <= HouseholdLimits.MostMonths && words.TakeAny("months", "month", "m"))
            {
                return (count, true);
            }
        }

        words.Now = before;
        return null;
    }

    /// <summary>A word as an amount; a currency sign or code on it is left out.</summary>
    public static Result<Money> AmountOf(string word, LineFacts facts)
    {
        string plain = string.Concat(word.Where(letter => char.GetUnicodeCategory(letter) != UnicodeCategory.CurrencySymbol));
        return plain.StartsWith('-') || plain.Length == 0 || !plain.Any(char.IsAsciiDigit)
            ? Result.Refused<Money>(new LineFault.NoAmount(word))
            : Money.Parse(plain, facts.Currency, facts.Numbers);
    }
}
