namespace Payday.Core.NotePlanning;

/// <summary>The exact note plan for values that form a chain of units.</summary>
/// <remarks>
/// Solves the relaxed plan, checks it with the parts' actual options, and shares the notes out if it holds, which
/// proves it best. Otherwise some loose note asked for more at levels above its break than was counted: the
/// part's option is then either taken, and counted, or forbidden, and the cheaper side is looked at first. A part
/// with one option counts exactly, so the search ends.
/// </remarks>
internal static class ChainSearch
{
    /// <summary>How many relaxed plans are looked at before the search goes straight down, unproven.</summary>
    private const int Bound = 400;

    /// <summary>Solves a problem whose goals can be paid in full, or returns null if the notes on hand don't suffice.</summary>
    /// <param name="system">The chain of the problem's values.</param>
    /// <param name="problem">The problem.</param>
    /// <param name="costs">What notes of each value cost.</param>
    public static NoteChoice? Solve(ChainSystem system, NoteProblem problem, NoteCost[] costs)
    {
        Dictionary<NoteGoal, ChainOption[]> known = [];
        ChainOption[][] all = [.. problem.Goals.Select(OptionsOf)];
        PriorityQueue<Node, (long Cost, int Order)> open = new();
        int made = 0;
        Push(all);
        while (open.TryDequeue(out Node? node, out _))
        {
            ChainOption?[] chosen = Chosen(node);
            int level = FirstMissed(system, node.Plan, chosen);
            if (level < 0)
            {
                return new NoteChoice(NoteShares.Of(system, problem, node.Plan.Notes, chosen!), made <= Bound);
            }

            if (made > Bound)
            {
                open.Clear();
            }

            int part = Culprit(node, chosen, level);
            ChainOption[] options = node.Options[part];
            ChainOption taken = chosen[part] ?? options[0];
            Push(Replace(node.Options, i => i == part, [taken]));

            // Parts with the same open options can change places: if this one doesn't take it, none of them does.
            Push(Replace(node.Options, i => node.Options[i] == options, [.. options.Where(option => option != taken)]));
        }

        return null;

        ChainOption[] OptionsOf(NoteGoal goal)
        {
            if (!known.TryGetValue(goal, out ChainOption[]? options))
            {
                problem.Effort.Spend(system.Levels << system.Breaks.Length);
                options = ChainOption.Of(system, goal);
                known.Add(goal, options);
            }

            return options;
        }

        void Push(ChainOption[][] options)
        {
            problem.Effort.Spend(system.Levels * (long)options.Length);
            if (ChainRelaxation.Solve(system, problem, costs, options) is { } plan)
            {
                open.Enqueue(new Node(options, plan), (plan.Cost, -made++));
            }
        }
    }

    private static ChainOption?[] Chosen(Node node)
    {
        ChainOption?[] chosen = new ChainOption?[node.Options.Length];
        for (int part = 0; part < chosen.Length; part++)
        {
            chosen[part] = Array.Find(node.Options[part], option => option.Loose == node.Plan.Loose[part]);
        }

        return chosen;
    }

    // The first level at which the parts ask for more than the plan has; the number of levels if a part
    // has no such option; below zero if the plan holds.
    private static int FirstMissed(ChainSystem system, ChainRelaxation plan, ChainOption?[] chosen)
    {
        if (Array.Exists(chosen, option => option is null))
        {
            return system.Levels;
        }

        long total = 0;
        for (int level = 0; level < system.Levels; level++)
        {
            total += plan.Notes[level] * system.Values[level];
            long asked = 0;
            foreach (ChainOption? option in chosen)
            {
                asked += option!.Least[level];
            }

            if (asked > total)
            {
                return level;
            }
        }

        return -1;
    }

    private static int Culprit(Node node, ChainOption?[] chosen, int level)
    {
        if (level == node.Plan.Notes.Length)
        {
            return Array.FindIndex(chosen, option => option is null);
        }

        int culprit = -1;
        long most = -1;
        for (int part = 0; part < chosen.Length; part++)
        {
            long over = chosen[part]!.Least[level] - node.Options[part].Min(option => option.Least[level]);
            if (node.Options[part].Length > 1 && over > most)
            {
                culprit = part;
                most = over;
            }
        }

        return culprit;
    }

    private static ChainOption[][] Replace(ChainOption[][] options, Func<int, bool> where, ChainOption[] with) =>
        [.. options.Select((open, part) => where(part) ? with : open)];

    private sealed record Node(ChainOption[][] Options, ChainRelaxation Plan);
}
