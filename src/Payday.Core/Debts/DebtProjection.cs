using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>When each debt is paid off, and what interest it costs until then.</summary>
/// <param name="Months">
/// How many months until the last debt that ends is paid, the first month included; 0 when nothing is left to pay.
/// </param>
/// <param name="Interest">All interest on the debts that end; what a never-ending debt costs has no sum.</param>
/// <param name="Debts">Every debt, in the order given.</param>
/// <param name="Never">The ids of the debts that never end, in the order given.</param>
public sealed record DebtProjection(
    int Months,
    Money Interest,
    ImmutableArray<ProjectedDebt> Debts,
    ImmutableArray<DebtId> Never)
{
    /// <summary>A debt that is still owed after so many months counts as never ending.</summary>
    public const int LongestMonths = 1_200;

    /// <summary>
    /// What is owed on all debts together: first before anything is paid, then at the end of each month, until no further
    /// month changes anything. More than 64 bits hold counts as the most they hold.
    /// </summary>
    public ImmutableArray<Money> Owed { get; init; } = [];

    /// <summary>What the end of each debt sets free for others, in the order in which that begins.</summary>
    public ImmutableArray<RollOn> RollOns { get; init; } = [];

    /// <summary>Projects payments on debts to their end.</summary>
    /// <param name="from">The first month in which interest accrues and payments are made.</param>
    /// <param name="debts">The debts now.</param>
    /// <param name="extraMonthly">What is paid each month above all minimums, zero or more.</param>
    /// <param name="onceNow">What is paid at once, before the first interest, zero or more.</param>
    /// <param name="order">Which debt gets what is above the minimums.</param>
    /// <param name="chosenId">A debt that comes before the order, or null. Once it is paid the order holds.</param>
    /// <remarks>
    /// Each month interest accrues (<see cref="Money.MonthOfInterest"/>) and every minimum is paid. The extra
    /// amount, the minimums of debts paid off before, and the unused part of the minimum of a debt
    /// paid off this month go to the first debt of the order, and what it doesn't need to the next.
    /// A percentage minimum rolls on as it was last asked for. Every amount is in whole minor units, and the
    /// last payment on a debt is exactly what is owed. Source of the rules: the project's design, 5.6.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An amount, a rate or a minimum is out of its range.</exception>
    /// <exception cref="ArgumentException">Two debts have the same id.</exception>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    /// <exception cref="OverflowException">The payments of one month don't fit 64 bits.</exception>
    public static DebtProjection Project(
        YearMonth from,
        IReadOnlyList<DebtState> debts,
        Money extraMonthly,
        Money onceNow,
        DebtOrder order,
        DebtId? chosenId = null)
    {
        ArgumentNullException.ThrowIfNull(debts);
        ImmutableArray<Money>.Builder owed = ImmutableArray.CreateBuilder<Money>();
        owed.Add(Together(debts.Select(debt => debt.Balance.ClampToZero()), extraMonthly.Currency));
        PayoffRun run = RunToTheEnd(new(from, debts, extraMonthly, onceNow, new(order, chosenId)), owed);
        return new(
            run.Debts.Max(debt => debt.PaidInMonth) ?? 0,
            Money.Sum(run.Debts.Where(debt => debt.IsPaid).Select(debt => debt.Interest), extraMonthly.Currency),
            [.. run.Debts.Select(debt => Outcome(debt, from))],
            [.. run.Debts.Where(debt => !debt.IsPaid).Select(debt => debt.State.Id)])
        {
            Owed = owed.ToImmutable(),
            RollOns = run.RollOns,
        };
    }

    private static PayoffRun RunToTheEnd(PayoffRun run, ImmutableArray<Money>.Builder owed)
    {
        while (!run.IsOver && run.Month < LongestMonths)
        {
            run.PayMonth();
            owed.Add(Together(run.Debts.Select(debt => debt.Balance), owed[0].Currency));
        }

        return run;
    }

    // A debt that never ends may grow beyond every amount there is, and two of them beyond their sum.
    private static Money Together(IEnumerable<Money> balances, Currency currency) => Money.FromMinorUnits(
        (long)Int128.Min(long.MaxValue, balances.Aggregate((Int128)0, (sum, balance) => sum + balance.MinorUnits)), currency);

    private static ProjectedDebt Outcome(RunningDebt debt, YearMonth from) => new(
        debt.State.Id,
        debt.State.Name,
        debt.PaidInMonth is { } month ? from.PlusMonths(Math.Max(month, 1) - 1) : null,
        debt.IsPaid ? debt.Interest : null)
    {
        AtOnce = debt.PaidInMonth == 0,
    };
}
