using System.Collections.Immutable;
using NodaTime;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Matching;

/// <summary>Holds a statement's lines against the lines of the account here.</summary>
/// <remarks>
/// All pairs at once, by the exact assignment with the most points; a pair is only taken where it beats the best assignment
/// without it by a margin. Exact in integers; ties go to the earlier line and the smaller number.
/// </remarks>
public static class LineMatcher
{
    // Above what two days of difference or a word more or less make.
    private const int LeastMargin = 110;

    private const int MostCandidates = 5;

    // Amounts that come up this often on one side are of several things.
    private const int CommonCount = 3;

    /// <summary>Matches.</summary>
    /// <param name="lines">The statement's booked lines, oldest first, those known before left out.</param>
    /// <param name="entries">The account lines that the bank hasn't shown yet.</param>
    /// <param name="end">The statement's last day, from which ages are counted.</param>
    public static MatchResult Match(IReadOnlyList<StatementLine> lines, IReadOnlyList<AccountLine> entries, LocalDate end)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(entries);
        AccountLine[] inOrder = [.. entries.OrderBy(entry => entry.Date).ThenBy(entry => entry.Number)];
        List<Pair> pairs = Pairs(lines, inOrder);
        int[] margins = new int[lines.Count];
        int[] entryOf = new int[lines.Count];
        Array.Fill(entryOf, -1);
        int[] lineClass = Classes(lines, line => (line.Date, line.Amount.MinorUnits, Folding.Fold(line.Party + "|" + line.Text)));
        int[] entryClass = Classes(inOrder, entry => (entry.MinorUnits, entry.Kind, Folding.Fold(entry.Text), entry.Mandate, entry.Tolerance));
        foreach (PairIsland island in PairIsland.Of(lines.Count, inOrder.Length, pairs))
        {
            var sure = new SureIsland(island, [.. island.Lefts.Select(left => lineClass[left])], [.. island.Rights.Select(right => entryClass[right])]);
            for (int i = 0; i < island.Lefts.Count; i++)
            {
                if (sure.RightOf[i] >= 0)
                {
                    entryOf[island.Lefts[i]] = island.Rights[sure.RightOf[i]];
                    margins[island.Lefts[i]] = sure.Margin(i);
                }
            }
        }

        return Result(lines, inOrder, pairs, entryOf, margins, end);
    }

    private static List<Pair> Pairs(IReadOnlyList<StatementLine> lines, AccountLine[] entries)
    {
        List<string>[] lineWords = [.. lines.Select(WordRarity.WordsOf)];
        List<string>[] entryWords = [.. entries.Select(entry => LineWords.Of(entry.Text))];
        Dictionary<long, int> counts = Counts(lines, entries);
        var score = new PairScore(new WordRarity(lineWords), amount => counts.GetValueOrDefault(amount) >= CommonCount);
        ILookup<long, int> exact = Enumerable.Range(0, entries.Length).Where(i => entries[i].Tolerance == 0).ToLookup(i => entries[i].MinorUnits);
        int[] near = [.. Enumerable.Range(0, entries.Length).Where(i => entries[i].Tolerance > 0)];
        var pairs = new List<Pair>();
        for (int i = 0; i < lines.Count; i++)
        {
            foreach (int at in exact[lines[i].Amount.MinorUnits].Concat(near))
            {
                if (score.Of(lines[i], lineWords[i], entries[at], entryWords[at]) is { } points)
                {
                    pairs.Add(new Pair(i, at, points));
                }
            }
        }

        return pairs;
    }

    private static Dictionary<long, int> Counts(IReadOnlyList<StatementLine> lines, AccountLine[] entries) =>
        lines.Select(line => line.Amount.MinorUnits).CountBy(amount => amount)
            .Concat(entries.Select(entry => entry.MinorUnits).CountBy(amount => amount))
            .GroupBy(pair => pair.Key)
            .ToDictionary(amount => amount.Key, amount => amount.Max(pair => pair.Value));

    private static int[] Classes<T, TKey>(IReadOnlyList<T> items, Func<T, TKey> key)
        where TKey : notnull
    {
        var numbers = new Dictionary<TKey, int>();
        int[] classes = new int[items.Count];
        for (int i = 0; i < classes.Length; i++)
        {
            TKey its = key(items[i]);
            if (!numbers.TryGetValue(its, out classes[i]))
            {
                numbers[its] = classes[i] = numbers.Count;
            }
        }

        return classes;
    }

    private static MatchResult Result(IReadOnlyList<StatementLine> lines, AccountLine[] entries, List<Pair> pairs, int[] entryOf, int[] margins, LocalDate end)
    {
        var isUsed = new bool[entries.Length];
        var matched = ImmutableArray.CreateBuilder<LineMatch>();
        var rest = new List<int>();
        for (int i = 0; i < lines.Count; i++)
        {
            if (entryOf[i] >= 0 && margins[i] >= LeastMargin)
            {
                matched.Add(new LineMatch(lines[i], entries[entryOf[i]], margins[i]));
                isUsed[entryOf[i]] = true;
            }
            else
            {
                rest.Add(i);
            }
        }

        var unclear = ImmutableArray.CreateBuilder<UnclearLine>();
        var sums = ImmutableArray.CreateBuilder<SumProposal>();
        var leftovers = ImmutableArray.CreateBuilder<Leftover>();
        ILookup<int, Pair> byLine = pairs.Where(pair => !isUsed[pair.Right]).ToLookup(pair => pair.Left);
        foreach (int line in rest)
        {
            ImmutableArray<AccountLine> candidates =
                [.. byLine[line].Where(pair => !isUsed[pair.Right]).OrderByDescending(pair => pair.Points).Take(MostCandidates).Select(pair => entries[pair.Right])];
            if (!candidates.IsEmpty)
            {
                unclear.Add(new UnclearLine(lines[line], candidates));
            }
            else if (SumFinder.Find(lines[line], Unused(entries, isUsed)) is { } sum)
            {
                sums.Add(sum);
                foreach (AccountLine part in sum.Entries)
                {
                    isUsed[Array.IndexOf(entries, part)] = true;
                }
            }
            else
            {
                leftovers.Add(new Leftover(lines[line], Leftovers.KindOf(lines[line], lines)));
            }
        }

        var shown = unclear.SelectMany(line => line.Candidates).ToHashSet();
        return new MatchResult(
            matched.ToImmutable(),
            unclear.ToImmutable(),
            sums.ToImmutable(),
            leftovers.ToImmutable(),
            [.. Unused(entries, isUsed).Where(entry => !shown.Contains(entry)).Select(entry => new OpenEntry(entry, Period.DaysBetween(entry.Date, end)))]);
    }

    private static AccountLine[] Unused(AccountLine[] entries, bool[] isUsed) => [.. entries.Where((_, i) => !isUsed[i])];
}
