namespace Payday.Core.NotePlanning;

/// <summary>How much work a search may still do, counted in steps of its innermost loops.</summary>
/// <remarks>
/// Work is counted and not timed, so that the same request gives the same plan on every machine. A search that meets
/// the end of its share is left at once, wherever it is (<see cref="EffortSpentException"/>), and a simpler one answers.
/// </remarks>
internal sealed class Effort
{
    /// <summary>The steps for one plan: some tenths of a second, a hundred times what a large household takes.</summary>
    public const long OfPlan = 30_000_000;

    private readonly Effort? whole;

    /// <param name="steps">How many steps.</param>
    public Effort(long steps) => Left = steps;

    private Effort(Effort whole, long steps)
    {
        this.whole = whole;
        Left = steps;
    }

    /// <summary>Steps left; below zero where more were done than there were.</summary>
    public long Left { get; private set; }

    /// <summary>Half of what is left, for a search of its own; what that doesn't use stays here.</summary>
    public Effort Half() => new(this, Math.Max(0, Left) / 2);

    /// <summary>Takes steps off, before they are done.</summary>
    /// <exception cref="EffortSpentException">There are not so many left.</exception>
    public void Spend(long steps)
    {
        Charge(steps);
        if (Left < 0)
        {
            throw new EffortSpentException();
        }
    }

    /// <summary>Takes steps off that are done in any case.</summary>
    public void Charge(long steps)
    {
        // What is asked for may be as large as an amount, and is never done.
        steps = Math.Min(steps, OfPlan);
        for (Effort? effort = this; effort is not null; effort = effort.whole)
        {
            effort.Left -= steps;
        }
    }
}
