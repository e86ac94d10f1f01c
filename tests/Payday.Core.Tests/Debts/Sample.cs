using NodaTime;
using Payday.Core.Debts;
using Payday.Core.Ids;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Debts;

/// <summary>Debts as tests write them.</summary>
internal static class Sample
{
    public static YearMonth January { get; } = new(2026, 1);

    public static DebtState Debt(string id, decimal balance, decimal rate, decimal minimum) =>
        new(new DebtId(id), id, Usd(balance), rate, new MinimumRule.Fixed(Usd(minimum)));

    public static DebtState Percent(string id, decimal balance, decimal rate, decimal percent, decimal floor) =>
        new(new DebtId(id), id, Usd(balance), rate, new MinimumRule.PercentOrFloor(percent, Usd(floor)));

    public static DebtProjection Project(decimal extra, DebtOrder order, params DebtState[] debts) =>
        DebtProjection.Project(January, debts, Usd(extra), Usd(0), order);

    /// <summary>The debt after so many months of its fixed minimum.</summary>
    public static RunningDebt After(int months, DebtState debt)
    {
        PayoffRun run = Run(0, 0, DebtOrder.HighestRate, debt);
        for (int i = 0; i < months; i++)
        {
            run.PayMonth();
        }

        return run.Debts[0];
    }

    public static PayoffRun Run(decimal extra, decimal once, DebtOrder order, params DebtState[] debts) =>
        new(new YearMonth(2026, 1), debts, Usd(extra), Usd(once), new PaymentOrder(order, null));

    public static YearMonth?[] PaidOff(this DebtProjection projection) =>
        [.. projection.Debts.Select(debt => debt.PaidOff)];
}
