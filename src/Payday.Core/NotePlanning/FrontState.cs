namespace Payday.Core.NotePlanning;

/// <summary>A sum over all parts of what their loose notes at one break ask for.</summary>
/// <param name="Loose">How many parts have a loose note.</param>
/// <param name="Least">The least totals at the levels the break reaches, the break's own last.</param>
/// <param name="Before">The state with one loose note less, or null.</param>
/// <param name="Kind">The kind of part that has it.</param>
internal sealed record FrontState(long Loose, long[] Least, FrontState? Before, int Kind)
{
    /// <summary>Whether every plan that another state allows is allowed by this one.</summary>
    /// <param name="other">
    /// A state with as many loose notes or two, four, ... more or fewer: two loose notes more are a pair that this state
    /// may have anyway.
    /// </param>
    public bool Covers(FrontState other)
    {
        if (Loose > other.Loose)
        {
            return false;
        }

        for (int i = 0; i < Least.Length; i++)
        {
            if (Least[i] > other.Least[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>This with one loose note more, in a part of a kind.</summary>
    public FrontState With(long[] change, int kind)
    {
        long[] least = new long[Least.Length];
        for (int i = 0; i < least.Length; i++)
        {
            least[i] = Least[i] + change[i];
        }

        return new FrontState(Loose + 1, least, this, kind);
    }
}
