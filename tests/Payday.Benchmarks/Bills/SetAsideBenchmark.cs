using BenchmarkDotNet.Attributes;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;

namespace Payday.Benchmarks.Bills;

/// <summary>A level plan for far more dues than a household has; the goal is below 5 ms for 10,000.</summary>
[MemoryDiagnoser]
public class SetAsideBenchmark
{
    private readonly Currency currency = Currency.FromCode("USD");
    private PlannedPayday[] paydays = [];
    private Due[] dues = [];

    /// <summary>A year of fortnights, and as many paydays as dues.</summary>
    [Params(27, 10_000)]
    public int Paydays { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        var start = new LocalDate(2026, 1, 2);
        paydays = [.. Enumerable.Range(0, Paydays)
            .Select(k => new PlannedPayday(start.PlusWeeks(2 * k), Money.FromMinorUnits(90_000_000 + (k * 7919 % 30_000_000), currency)))];

        // A multiplier without a factor in common with 10,000 takes every day once, in no order.
        int days = 14 * Paydays;
        dues = [.. Enumerable.Range(0, 10_000)
            .Select(i => new Due(new BillId("bill"), "Bill", start.PlusDays((int)(i * 7919L % 10_000 * days / 10_000)), Money.FromMinorUnits(i * 31L % 9_973, currency)))];
    }

    [Benchmark]
    public SetAsidePlan Level() =>
        SetAsidePlanner.Plan(SetAsideMode.Level, Money.FromMinorUnits(50_000, currency), paydays, dues);
}
