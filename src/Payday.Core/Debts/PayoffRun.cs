using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>Pays debts off month by month.</summary>
/// <remarks>
/// Each month interest accrues and the minimums are paid; then what is above them goes out in order: the extra
/// amount, the minimums of debts paid off in earlier months, and what debts paid off by this month's
/// minimum left of it. What no debt needs stays with the household.
/// </remarks>
internal sealed class PayoffRun
{
    private readonly RunningDebt[] debts;
    private readonly YearMonth from;
    private readonly Money extraMonthly;
    private readonly PaymentOrder order;
    private readonly RollOns rollOns = new();

    /// <summary>Starts with the money that is paid at once, before the first interest.</summary>
    public PayoffRun(YearMonth from, IReadOnlyList<DebtState> states, Money extraMonthly, Money onceNow, PaymentOrder order)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(extraMonthly.MinorUnits, nameof(extraMonthly));
        ArgumentOutOfRangeException.ThrowIfNegative(onceNow.MinorUnits, nameof(onceNow));
        debts = [.. states.Select(state => new RunningDebt(state))];
        if (states.DistinctBy(state => state.Id).Count() < debts.Length)
        {
            throw new ArgumentException("Two debts have the same id.", nameof(states));
        }

        this.from = from;
        this.extraMonthly = extraMonthly;
        this.order = order;
        order.Spend(onceNow, debts);
        CloseMonth();
    }

    /// <summary>The debts, in the order given.</summary>
    public IReadOnlyList<RunningDebt> Debts => debts;

    /// <summary>What the end of each debt sets free for others.</summary>
    public ImmutableArray<RollOn> RollOns => rollOns.Seen();

    /// <summary>The months paid so far.</summary>
    public int Month { get; private set; }

    /// <summary>Whether no further month changes anything: every debt is paid or beyond payment.</summary>
    public bool IsOver => debts.All(debt => debt.IsPaid || debt.IsRunaway);

    /// <summary>Pays the next month.</summary>
    public void PayMonth()
    {
        Month++;
        YearMonth month = from.PlusMonths(Month - 1);
        Money aboveMinimums = extraMonthly;
        var free = new List<(DebtId From, Money Amount)>();
        foreach (RunningDebt debt in debts)
        {
            if (Month > debt.State.MonthsCovered)
            {
                Money set = debt.IsPaid ? debt.SetFree : debt.PayMonth(debt.State.In(month));
                aboveMinimums += set;
                free.Add((debt.State.Id, set));
            }
        }

        rollOns.Begin(extraMonthly, free);
        order.Spend(aboveMinimums, debts, (debt, payment) => rollOns.Pay(debt.State.Id, payment, month));
        CloseMonth();
    }

    private void CloseMonth()
    {
        foreach (RunningDebt debt in debts)
        {
            debt.CloseMonth(Month);
        }
    }
}
