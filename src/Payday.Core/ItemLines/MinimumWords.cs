using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Drafts;

namespace Payday.Core.ItemLines;

/// <summary>Reads a debt's minimum: <c>25</c>, <c>2% or 25</c>, <c>1% plus interest</c>.</summary>
internal static class MinimumWords
{
    /// <summary>Whether a minimum stands at the front though no word says so.</summary>
    /// <remarks>Behind a rate, a percentage or an amount is one; a lone figure that could be a day too is asked about.</remarks>
    public static bool Begin(LineWords words, bool hasRate)
    {
        if (!hasRate || words.Left == 0)
        {
            return false;
        }

        ImmutableArray<string> before = words.Now;
        bool isPart = words.Percent() is not null;
        words.Now = before;
        bool isAmount = words.Amount() is not null;
        bool isLast = words.Left == 0;
        words.Now = before;
        bool isDay = words.Day() is not null;
        words.Now = before;
        if (isAmount && isDay && isLast)
        {
            words.Ask(words.Front, $"min {words.Front}", $"on the {ItemText.Nth(int.Parse(words.Front, NumberStyles.None, CultureInfo.InvariantCulture))}");
        }

        return isPart || (isAmount && !(isDay && isLast));
    }

    /// <summary>Takes a minimum; null where none stands there.</summary>
    public static MinimumDraft? Take(LineWords words)
    {
        if (words.Percent() is { } part)
        {
            bool? plus = words.TakeAny("plus interest", "and interest", "+ interest") ? true : null;
            bool isSaid = words.TakeAny("or", "at least", "but at least", "but");
            ImmutableArray<string> before = words.Now;
            decimal? least = words.Amount();
            if (!isSaid && least is not null && words.Left == 0 && before.Length == 1 && words.IsADay(before))
            {
                // The last figure alone is the day: there may be no least.
                words.Now = before;
                least = null;
            }

            return new() { Kind = MinimumKind.Part, Percent = part, PlusInterest = plus, Floor = least ?? 0 };
        }

        return words.Amount() is { } amount ? new() { Kind = MinimumKind.Fixed, Fixed = amount } : null;
    }
}
