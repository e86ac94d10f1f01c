namespace Payday.Statements.Habits;

/// <summary>What the amounts of a series say, oldest first, as sizes in minor units.</summary>
internal sealed class SeriesAmounts
{
    private const int HoldPercent = 80;
    private const int CountOnPercent = 20;
    private const int MostForHold = 12;

    // An amount is another for good once it has come twice after another had come twice.
    private const int Lasting = 2;

    private readonly long[] amounts;
    private readonly int since;

    /// <summary>Looks at the amounts.</summary>
    public SeriesAmounts(IEnumerable<long> sizes)
    {
        amounts = [.. sizes];
        since = LastStep();
        long[] now = amounts[since..];
        Usual = Quantiles.LowerMedian(now);
        long[] recent = now[Math.Max(0, now.Length - MostForHold)..];
        Hold = Math.Max(Usual, Quantiles.Of(recent, HoldPercent));
        CountOn = Math.Min(Usual, Quantiles.Of(recent, CountOnPercent));
    }

    /// <summary>The lower median since the last lasting change.</summary>
    public long Usual { get; }

    /// <summary>What to hold.</summary>
    public long Hold { get; }

    /// <summary>What can be counted on.</summary>
    public long CountOn { get; }

    /// <summary>The place of the first amount of a lasting change, and how much more it is; null where there is none.</summary>
    public (int At, long Difference)? Step => since > 0 ? (since, amounts[since] - amounts[since - 1]) : null;

    /// <summary>Whether they hardly ever change: equal but for one change in every five.</summary>
    public bool AreFixed
    {
        get
        {
            int changes = 0;
            for (int i = 1; i < amounts.Length; i++)
            {
                changes += amounts[i] != amounts[i - 1] ? 1 : 0;
            }

            return changes <= amounts.Length / 5;
        }
    }

    /// <summary>How far they spread: the median distance from the median, in hundredths of it (Rousseeuw and Croux 1993).</summary>
    public long Spread
    {
        get
        {
            long median = Quantiles.LowerMedian(amounts);
            return median == 0 ? 0 : 100 * Quantiles.LowerMedian([.. amounts.Select(amount => Math.Abs(amount - median))]) / median;
        }
    }

    private int LastStep()
    {
        int start = amounts.Length - 1;
        while (start > 0 && amounts[start - 1] == amounts[start])
        {
            start--;
        }

        bool isLasting = amounts.Length - start >= Lasting;
        bool wasStable = start >= Lasting && amounts[start - 1] == amounts[start - 2];
        return isLasting && wasStable ? start : 0;
    }
}
