namespace Payday.Core.NotePlanning;

/// <summary>The cheapest totals of notes that meet what the parts ask for, break by break.</summary>
/// <param name="Cost">Not above the cost of any plan that keeps to the open options.</param>
/// <param name="Notes">Level by level, how many notes.</param>
/// <param name="Loose">Part by part, at which breaks it has a loose note.</param>
internal sealed record ChainRelaxation(long Cost, long[] Notes, int[] Loose)
{
    /// <summary>Solves it, or returns null if the options can't be met with the notes there are.</summary>
    /// <remarks>
    /// <para>
    /// Once it is said which parts have loose notes where, totals of notes can be handed out if and only if
    /// there are enough for the loose ones, the rest at a break are pairs, and for each level the total value up to it
    /// is at least the sum of what the parts ask for. (The larger notes can be given one by one to any part that
    /// has room above its least for smaller ones; the rests agree because the units divide one another.)
    /// So the best totals are found level by level over the value so far. At a break all sensible
    /// spreads of loose notes are tried.
    /// </para>
    /// <para>
    /// It is relaxed in that a loose note at one break may raise what a part must hold at levels above the break.
    /// That is not counted, and has to be checked.
    /// </para>
    /// </remarks>
    public static ChainRelaxation? Solve(ChainSystem system, NoteProblem problem, NoteCost[] costs, ChainOption[][] options) =>
        new Run(system, problem, costs, options).Solve();

    private sealed class Run(ChainSystem system, NoteProblem problem, NoteCost[] costs, ChainOption[][] options)
    {
        private readonly ChainBounds bounds = ChainBounds.Of(system, problem, options);
        private readonly long all = problem.Goals.Sum(goal => goal.Amount);
        private readonly List<Func<long, long>> back = [];
        private readonly long[] notes = new long[system.Levels];
        private readonly int[] loose = new int[options.Length];

        public ChainRelaxation? Solve()
        {
            LevelTable? table = LevelTable.Nothing;
            int nextBreak = 0;
            for (int level = 0; level < system.Levels && table is not null; level++)
            {
                if (nextBreak < system.Breaks.Length && system.First[nextBreak] == level - 1)
                {
                    table = AddBlock(table, nextBreak);
                    level = system.Breaks[nextBreak++];
                }
                else
                {
                    table = AddLevel(table, level);
                }
            }

            if (table is null || table.Cost[0] >= LevelTable.Never)
            {
                return null;
            }

            long total = all;
            for (int i = back.Count - 1; i >= 0; i--)
            {
                total = back[i](total);
            }

            return new ChainRelaxation(table.Cost[0], notes, loose);
        }

        private LevelTable? AddLevel(LevelTable before, int level)
        {
            long least = level == 0 ? 0 : bounds.Least[level - 1];
            if (before.Select(least, all, system.Unit[level]) is not { } from
                || OpenStep(from, level, 0, bounds.Least[level], bounds.Most[level]) is not { } step)
            {
                return null;
            }

            back.Add(total => Unwind(step, level, total));
            return step.After;
        }

        // From the level where the block starts, where all rests are still open, to its break, where they are again.
        private LevelTable? AddBlock(LevelTable before, int breakIndex)
        {
            int end = system.Breaks[breakIndex];
            LooseKinds kinds = new(system, breakIndex, options);
            (FrontState State, LevelStep[] Steps)[] ways =
            [
                .. BreakFront.Of(kinds, problem.Effort).Select(state => (state, Through(before, breakIndex, state, kinds.Above)!)).Where(way => way.Item2 is not null),
            ];
            if (ways.Length == 0)
            {
                return null;
            }

            LevelTable shape = ways.Select(way => way.Steps[^1].After).MinBy(after => after.Start)!;
            long last = ways.Max(way => way.Steps[^1].After.Total(way.Steps[^1].After.Cost.Length - 1));
            problem.Effort.Spend((shape.IndexOf(last) + 1) * (long)ways.Length);
            LevelTable merged = new(shape.Start, shape.Step, new long[shape.IndexOf(last) + 1]);
            int[] best = new int[merged.Cost.Length];
            Array.Fill(merged.Cost, LevelTable.Never);
            for (int way = 0; way < ways.Length; way++)
            {
                LevelTable after = ways[way].Steps[^1].After;
                int offset = merged.IndexOf(after.Start);
                for (int i = 0; i < after.Cost.Length; i++)
                {
                    if (after.Cost[i] < merged.Cost[offset + i])
                    {
                        merged.Cost[offset + i] = after.Cost[i];
                        best[offset + i] = way;
                    }
                }
            }

            back.Add(total =>
            {
                (FrontState state, LevelStep[] steps) = ways[best[merged.IndexOf(total)]];
                kinds.Mark(state, loose);
                for (int i = steps.Length - 1; i >= 0; i--)
                {
                    total = Unwind(steps[i], end - (steps.Length - 1 - i), total);
                }

                return total;
            });
            return merged;
        }

        private LevelStep[]? Through(LevelTable before, int breakIndex, FrontState state, long[] above)
        {
            int start = system.First[breakIndex];
            int end = system.Breaks[breakIndex];
            int shift = Math.Max(start, 0);
            long like = all - (state.Loose * system.Values[end]);
            long leastAtStart = start < 0 ? 0 : state.Least[0];
            LevelTable? from = before.Select(leastAtStart, like, system.Unit[start + 1]);
            LevelStep[] steps = new LevelStep[end - start];
            long most = start < 0 ? 0 : bounds.Most[start];
            for (int level = start + 1; level <= end; level++)
            {
                if (from is null)
                {
                    return null;
                }

                long least = state.Least[level - shift];
                most = Math.Min(bounds.Most[level], ChainBounds.MostAt(system, problem, level, least + above[level - shift], most, level < end ? 0 : state.Loose));
                long unit = level < end ? system.Unit[level + 1] : 0;
                LevelStep? step = level < end
                    ? LevelStep.Add(costs[level], problem.Values[level], 0, from, Whole.Next(least, like, unit), unit, most, problem.Effort)
                    : OpenStep(from, level, state.Loose, least, most);
                if (step is null)
                {
                    return null;
                }

                steps[level - start - 1] = step;
                from = step.After;
            }

            return steps;
        }

        private LevelStep? OpenStep(LevelTable from, int level, long looseNotes, long least, long most)
        {
            long value = problem.Values[level];
            if (level == system.Levels - 1)
            {
                return LevelStep.Add(costs[level], value, looseNotes, from, all, 1, all, problem.Effort);
            }

            long step = system.StepAbove(level);
            return LevelStep.Add(costs[level], value, looseNotes, from, Whole.Next(least, all, step), step, most, problem.Effort);
        }

        private long Unwind(LevelStep step, int level, long total)
        {
            long below = step.Back(total);
            notes[level] = (total - below) / problem.Values[level];
            return below;
        }
    }
}
