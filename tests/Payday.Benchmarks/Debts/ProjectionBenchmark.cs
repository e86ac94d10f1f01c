using BenchmarkDotNet.Attributes;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Debts;

namespace Payday.Benchmarks.Debts;

/// <summary>Twenty debts over forty years; the goal is below 5 ms, so that a screen can project as one types.</summary>
[MemoryDiagnoser]
public class ProjectionBenchmark
{
    private const int Months = 480;

    private static readonly Currency Dollars = Currency.FromCode("USD");

    private readonly DebtState[] fortyYears = Make((balance, rate) => PaymentFor(balance, rate));

    // Each pays just its interest, so the projection runs to its cap of 1,200 months.
    private readonly DebtState[] never = Make((balance, rate) => balance.MonthOfInterest(rate));

    /// <summary>The order that looks for the smallest balance each month.</summary>
    [Benchmark(Baseline = true)]
    public DebtProjection SmallestBalance() => Project(fortyYears, DebtOrder.SmallestBalance);

    /// <summary>The order of rates.</summary>
    [Benchmark]
    public DebtProjection HighestRate() => Project(fortyYears, DebtOrder.HighestRate);

    /// <summary>To the cap of months.</summary>
    [Benchmark]
    public DebtProjection NeverEnding() => Project(never, DebtOrder.HighestRate);

    private static DebtState[] Make(Func<Money, decimal, Money> payment) =>
    [
        .. Enumerable.Range(0, 20).Select(i =>
        {
            Money balance = Money.FromUnits(20_000 + (500 * i), Dollars);
            decimal rate = 0.04m + (i * 0.005m);
            return new DebtState(new($"{i}"), $"Debt {i}", balance, rate, new MinimumRule.Fixed(payment(balance, rate)));
        }),
    ];

    // The exact payment for the term, P i / (1 - (1 + i)^-n), to the cent above.
    private static Money PaymentFor(Money balance, decimal rate)
    {
        double month = (double)rate / 12;
        double cents = balance.MinorUnits * month / (1 - Math.Pow(1 + month, -Months));
        return Money.FromMinorUnits((long)Math.Ceiling(cents), Dollars);
    }

    private static DebtProjection Project(DebtState[] debts, DebtOrder order) => DebtProjection.Project(
        new YearMonth(2026, 1), debts, Money.Zero(Dollars), Money.Zero(Dollars), order);
}
