using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Bills;

/// <summary>Running totals, in minor units, of what comes in and what must be held by each payday.</summary>
internal sealed class SetAsideNeeds
{
    private readonly Money held;
    private readonly IReadOnlyList<Due> dues;
    private readonly int[] periods;
    private readonly long[] income;
    private readonly long[] dueByPeriod;

    private SetAsideNeeds(Money held, IReadOnlyList<Due> dues, int[] periods, long[] income, long[] dueByPeriod)
    {
        this.held = held;
        this.dues = dues;
        this.periods = periods;
        this.income = income;
        this.dueByPeriod = dueByPeriod;
    }

    /// <summary>All that falls due up to the end of each payday's period.</summary>
    public ReadOnlySpan<long> DueByPeriod => dueByPeriod;

    // Zero can mean "can't be foreseen": with no income known there is nothing known to limit by.
    private bool IncomeIsKnown => income.Length > 0 && income[^1] > 0;

    /// <inheritdoc cref="SetAsidePlanner.Plan"/>
    public static SetAsideNeeds From(Money held, IReadOnlyList<PlannedPayday> paydays, IReadOnlyList<Due> dues)
    {
        ArgumentNullException.ThrowIfNull(paydays);
        ArgumentNullException.ThrowIfNull(dues);
        ThrowIfNegative(held, nameof(held));

        var income = new long[paydays.Count];
        Money incomeSum = Money.Zero(held.Currency);
        for (int k = 0; k < paydays.Count; k++)
        {
            if (k > 0 && paydays[k].Date < paydays[k - 1].Date)
            {
                throw new ArgumentException("The paydays are not in order.", nameof(paydays));
            }

            ThrowIfNegative(paydays[k].Income, nameof(paydays));
            incomeSum += paydays[k].Income;
            income[k] = incomeSum.MinorUnits;
        }

        IReadOnlyList<Due> ordered = InOrder(dues);
        var periods = new int[ordered.Count];
        var dueByPeriod = new long[paydays.Count];
        Money dueSum = Money.Zero(held.Currency);
        int period = -1;
        for (int i = 0; i < ordered.Count; i++)
        {
            ThrowIfNegative(ordered[i].Amount, nameof(dues));
            for (; period + 1 < paydays.Count && paydays[period + 1].Date <= ordered[i].Date; period++)
            {
                if (period >= 0)
                {
                    dueByPeriod[period] = dueSum.MinorUnits;
                }
            }

            dueSum += ordered[i].Amount;
            periods[i] = period;
        }

        dueByPeriod.AsSpan(Math.Min(Math.Max(period, 0), paydays.Count)).Fill(dueSum.MinorUnits);
        return new SetAsideNeeds(held, ordered, periods, income, dueByPeriod);
    }

    /// <summary>The least that must have been set aside by each payday: what is needed, or all there is.</summary>
    public long[] LeastSetAside()
    {
        var least = new long[dueByPeriod.Length];
        for (int k = 0; k < least.Length; k++)
        {
            least[k] = IncomeIsKnown ? Math.Min(Needed(k), income[k]) : Needed(k);
        }

        return least;
    }

    /// <summary>What has been set aside by each payday where each pays its own period: what is needed, as far as that day's income reaches.</summary>
    public long[] OwnSetAside()
    {
        var own = new long[dueByPeriod.Length];
        long before = 0;
        long incomeBefore = 0;
        for (int k = 0; k < own.Length; k++)
        {
            long lacking = Math.Max(0, Needed(k) - before);
            before += IncomeIsKnown ? Math.Min(lacking, income[k] - incomeBefore) : lacking;
            incomeBefore = income[k];
            own[k] = before;
        }

        return own;
    }

    /// <summary>The running total against which the plan is level: income, or the count of paydays where none is known.</summary>
    public long[] Weights() =>
        IncomeIsKnown ? income : [.. Enumerable.Range(1, income.Length).Select(count => (long)count)];

    /// <summary>The dues that what is held, and what has been set aside by their payday, can't pay in full.</summary>
    /// <param name="total">By payday: all that has been set aside by then.</param>
    public ImmutableArray<LateDue> Late(ReadOnlySpan<long> total)
    {
        var late = ImmutableArray.CreateBuilder<LateDue>();
        Int128 dueSoFar = 0;
        for (int i = 0; i < dues.Count; i++)
        {
            long amount = dues[i].Amount.MinorUnits;
            dueSoFar += amount;
            Int128 most = (Int128)held.MinorUnits + (periods[i] < 0 ? 0 : total[periods[i]]);
            Int128 missing = Int128.Min(dueSoFar - most, amount);
            if (missing > 0)
            {
                late.Add(new LateDue(dues[i], Money.FromMinorUnits((long)missing, held.Currency)));
            }
        }

        return late.DrainToImmutable();
    }

    private long Needed(int payday) => Math.Max(0, dueByPeriod[payday] - held.MinorUnits);

    // By date, those of one date in the order given; most come so. Sorting plain numbers of both takes a third of the time that a
    // stable sort of the dates does, which is most of the time of a large plan.
    private static IReadOnlyList<Due> InOrder(IReadOnlyList<Due> dues)
    {
        if (Enumerable.Range(1, Math.Max(0, dues.Count - 1)).All(i => dues[i - 1].Date <= dues[i].Date))
        {
            return dues;
        }

        var keys = new long[dues.Count];
        for (int i = 0; i < keys.Length; i++)
        {
            keys[i] = ((((long)dues[i].Date.Year << 9) + dues[i].Date.DayOfYear) << 32) + i;
        }

        Array.Sort(keys);
        return Array.ConvertAll(keys, key => dues[(int)(key & int.MaxValue)]);
    }

    private static void ThrowIfNegative(Money amount, string name) =>
        ArgumentOutOfRangeException.ThrowIfNegative(amount.MinorUnits, name);
}
