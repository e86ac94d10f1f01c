namespace Payday.Core.NotePlanning;

/// <summary>The sensible ways to spread loose notes at one break over the parts.</summary>
/// <remarks>
/// Parts differ only in how a loose note changes what they must hold in smaller notes: up or down by half a unit,
/// level by level. Two levels make four kinds. Where one kind rises at a level another falls, so that most mixes
/// of kinds are covered by a simpler one; what is left is a single row of about as many states as there are parts.
/// All states that no other covers are found here by adding loose notes kind by kind, one at a time: as soon as
/// one more brings nothing new, no further one does.
/// </remarks>
internal static class BreakFront
{
    /// <summary>All states that no other covers.</summary>
    /// <param name="kinds">The parts by kind.</param>
    /// <param name="effort">The work it may cost.</param>
    public static IReadOnlyList<FrontState> Of(LooseKinds kinds, Effort effort)
    {
        // A state covers only others with as many loose notes or two, four, ... more.
        List<FrontState>[] front = [[], []];
        front[kinds.Start.Loose & 1].Add(kinds.Start);
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            List<FrontState> layer = [.. front[0], .. front[1]];
            for (int copy = 0; copy < kinds.PartsOf(kind) && layer.Count > 0; copy++)
            {
                effort.Spend(layer.Count * (long)(front[0].Count + front[1].Count));
                layer = AddCopy(front, layer, kinds, kind);
            }
        }

        return [.. front[0], .. front[1]];
    }

    private static List<FrontState> AddCopy(List<FrontState>[] front, List<FrontState> layer, LooseKinds kinds, int kind)
    {
        List<FrontState> added = [];
        foreach (FrontState state in layer)
        {
            FrontState next = kinds.With(state, kind);
            List<FrontState> rivals = front[next.Loose & 1];
            if (!IsCovered(next, rivals))
            {
                rivals.RemoveAll(next.Covers);
                rivals.Add(next);
                added.Add(next);
            }
        }

        return added;
    }

    private static bool IsCovered(FrontState state, List<FrontState> rivals)
    {
        // The latest are the likeliest to cover it.
        for (int i = rivals.Count - 1; i >= 0; i--)
        {
            if (rivals[i].Covers(state))
            {
                return true;
            }
        }

        return false;
    }
}
