using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.BankLines;

namespace Payday.Core.Reconciling;

/// <summary>Where to look for a difference, by the rules of the trade (design, rule 14; common practice, no source).</summary>
internal static class Culprits
{
    // Beyond this a triple is found for nearly any amount, and says nothing.
    private const int MostForTriples = 60;
    private const int MostForPairs = 400;
    private const int MostTogether = 3;

    /// <summary>The likely ones, the likeliest first; none where there is no difference.</summary>
    /// <param name="lines">The open lines.</param>
    /// <param name="ticked">The numbers of those that are ticked.</param>
    /// <param name="difference">The bank's balance less what it was expected to be.</param>
    public static ImmutableArray<Culprit> Of(ImmutableArray<AccountLine> lines, ImmutableSortedSet<long> ticked, Money difference)
    {
        if (difference.IsZero)
        {
            return [];
        }

        ImmutableArray<Culprit> alone = [.. Alone(lines, ticked, difference)];
        ImmutableArray<Culprit> all = alone.IsEmpty ? [.. Together(lines, ticked, difference).Take(MostTogether)] : alone;
        return !all.IsEmpty ? all
            : ticked.IsEmpty && !lines.IsEmpty ? [new Culprit.NoneTicked()]
            : [new Culprit.NotEntered(difference)];
    }

    private static IEnumerable<Culprit> Alone(ImmutableArray<AccountLine> lines, ImmutableSortedSet<long> ticked, Money difference)
    {
        foreach (AccountLine line in lines.Where(line => !ticked.Contains(line.Number) && line.Amount == difference))
        {
            yield return new Culprit.NotTicked(line);
        }

        foreach (AccountLine line in lines.Where(line => ticked.Contains(line.Number) && line.Amount == -difference).Reverse())
        {
            AccountLine? twin = lines.LastOrDefault(other => other.Number < line.Number && ticked.Contains(other.Number) && other.Amount == line.Amount && other.Other == line.Other);
            if (twin is not null)
            {
                yield return new Culprit.Twice(line, twin);
            }
            else if (!lines.Any(other => other.Number > line.Number && ticked.Contains(other.Number) && other.Amount == line.Amount && other.Other == line.Other))
            {
                yield return new Culprit.NotThere(line);
            }
        }

        foreach (AccountLine line in lines.Where(line => ticked.Contains(line.Number) && line.Amount + line.Amount == -difference))
        {
            yield return new Culprit.WrongSign(line);
        }

        // What cash came to was counted in notes, and not typed.
        foreach (AccountLine line in lines.Where(line => line.Kind is AccountLineKind.Income or AccountLineKind.Payment))
        {
            // Of a ticked line the bank has so much more or less; one that isn't ticked, as it looks otherwise there, isn't expected at all.
            Money bank = ticked.Contains(line.Number) ? line.Amount + difference : difference;
            if (IsSwapped(line.Amount.MinorUnits, bank.MinorUnits))
            {
                yield return new Culprit.Swapped(line, bank);
            }
        }
    }

    private static IEnumerable<Culprit> Together(ImmutableArray<AccountLine> lines, ImmutableSortedSet<long> ticked, Money difference)
    {
        if (lines.Length > MostForPairs)
        {
            yield break;
        }

        long[] amounts = [.. lines.Select(line => ticked.Contains(line.Number) ? -line.Amount.MinorUnits : line.Amount.MinorUnits)];
        for (int i = 0; i < amounts.Length; i++)
        {
            for (int j = i + 1; j < amounts.Length; j++)
            {
                if ((Int128)amounts[i] + amounts[j] == difference.MinorUnits)
                {
                    yield return new Culprit.Together([lines[i], lines[j]]);
                }
            }
        }

        for (int i = 0; lines.Length <= MostForTriples && i < amounts.Length; i++)
        {
            for (int j = i + 1; j < amounts.Length; j++)
            {
                for (int k = j + 1; k < amounts.Length; k++)
                {
                    if ((Int128)amounts[i] + amounts[j] + amounts[k] == difference.MinorUnits)
                    {
                        yield return new Culprit.Together([lines[i], lines[j], lines[k]]);
                    }
                }
            }
        }
    }

    /// <summary>Whether one amount becomes another by swapping two neighbouring digits; the two then differ by a multiple of nine.</summary>
    internal static bool IsSwapped(long here, long bank)
    {
        if (here == bank || long.Sign(here) != long.Sign(bank) || ((Int128)here - bank) % 9 != 0)
        {
            return false;
        }

        Int128 size = Int128.Abs(here);
        Int128 other = Int128.Abs(bank);
        for (Int128 place = 1; place * 10 <= size || place * 10 <= other; place *= 10)
        {
            Int128 low = size / place % 10;
            Int128 high = size / (place * 10) % 10;
            if (size + ((low - high) * place * 9) == other)
            {
                return true;
            }
        }

        return false;
    }
}
