namespace Payday.Core.NotePlanning;

/// <summary>A note request in whole units of the greatest common divisor of its notes.</summary>
/// <param name="Unit">The unit, in minor units.</param>
/// <param name="Values">Note values, rising, different.</param>
/// <param name="OnHand">How many of each are on hand.</param>
/// <param name="Fetchable">Whether more of each can be fetched; the others can only be used up.</param>
/// <param name="Goals">What is to be paid.</param>
/// <param name="Effort">The work that searching it may cost.</param>
internal sealed record NoteProblem(long Unit, long[] Values, long[] OnHand, bool[] Fetchable, NoteGoal[] Goals, Effort Effort)
{
    /// <summary>The same notes with other goals.</summary>
    public NoteProblem With(NoteGoal[] goals) => this with { Goals = goals };
}

/// <summary>What one part is to be paid.</summary>
/// <param name="Amount">Units to pay at most.</param>
/// <param name="Top">How many of the values it takes, counted from the smallest.</param>
/// <param name="Small">How many of these count as small.</param>
/// <param name="AtLeast">Units wanted in small notes.</param>
/// <param name="RoundedBy">By how many minor units that is more than the small money wished for.</param>
internal sealed record NoteGoal(long Amount, int Top, int Small, long AtLeast, long RoundedBy = 0);

/// <summary>Notes for each goal of a problem.</summary>
/// <param name="Counts">Goal by goal, how many of each value.</param>
/// <param name="Proven">Whether no better choice exists.</param>
internal sealed record NoteChoice(long[][] Counts, bool Proven);
