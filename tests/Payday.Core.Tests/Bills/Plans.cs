using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;
using Payday.Core.Tests.Lives;

namespace Payday.Core.Tests.Bills;

/// <summary>Short ways to write paydays and dues in tests: one payday a week, amounts in minor units.</summary>
internal static class Plans
{
    public static readonly LocalDate FirstPayday = new(2026, 1, 2);

    private static readonly Currency Usd = Currency.FromCode("USD");

    /// <summary>Small cases with unlucky ones among them: no income, too little, dues before the first payday.</summary>
    public static Gen<Case> SomeCase { get; } = Gen.Select(
        Gen.Long[0, 40],
        Gen.OneOf(Gen.Long[0, 30], Gen.Const(0L), Gen.Const(20L)).Array[0, 7],
        Gen.Select(Gen.Int[-5, 50], Gen.Long[0, 40]).Array[0, 9],
        (held, incomes, dues) => new Case(
            Cents(held), Paydays(incomes), [.. dues.Select((due, i) => DueOn(due.Item1, due.Item2, "bill" + (char)('a' + i)))]));

    public static Money Cents(long amount) => Money.FromMinorUnits(amount, Usd);

    public static PlannedPayday[] Paydays(params long[] incomes) =>
        [.. incomes.Select((income, k) => new PlannedPayday(FirstPayday.PlusWeeks(k), Cents(income)))];

    public static Due DueOn(int daysAfterFirstPayday, long amount, string bill = "rent") =>
        new(new BillId(bill), bill, FirstPayday.PlusDays(daysAfterFirstPayday), Cents(amount));

    /// <summary>One due in the middle of each period that has any.</summary>
    public static Due[] DuesByPeriod(params long[] amounts) =>
        [.. amounts.Select((amount, k) => DueOn((7 * k) + 3, amount)).Where(due => due.Amount.IsPositive)];

    public static long[] SetAsides(SetAsidePlan plan) => [.. plan.Rows.Select(row => row.SetAside.MinorUnits)];

    public static long[] RunningTotal(IEnumerable<long> amounts)
    {
        long sum = 0;
        return [.. amounts.Select(amount => sum += amount)];
    }

    public sealed record Case(Money Held, PlannedPayday[] Paydays, Due[] Dues)
    {
        public long[] Income => RunningTotal(Paydays.Select(payday => payday.Income.MinorUnits));

        public bool IncomeIsKnown => Income.LastOrDefault() > 0;

        /// <summary>The least that must be set aside by each payday, written from the definition, one payday at a time.</summary>
        public long[] Least =>
        [
            .. Paydays.Select((_, k) =>
            {
                long due = Dues
                    .Where(due => k + 1 == Paydays.Length || due.Date < Paydays[k + 1].Date)
                    .Sum(due => due.Amount.MinorUnits);
                return Math.Max(0, IncomeIsKnown ? Math.Min(due - Held.MinorUnits, Income[k]) : due - Held.MinorUnits);
            }),
        ];

        public SetAsidePlan Plan(SetAsideMode mode) => SetAsidePlanner.Plan(mode, Held, Paydays, Dues);
    }
}
