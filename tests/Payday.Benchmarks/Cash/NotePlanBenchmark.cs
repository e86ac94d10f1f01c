using BenchmarkDotNet.Attributes;
using Payday.Core.Cash;
using Payday.Core.NotePlanning;

namespace Payday.Benchmarks.Cash;

/// <summary>The note plan of a very large household against a general integer solver on the same input.</summary>
/// <remarks>The setup checks that both find the same optimum, and that both have proven it.</remarks>
[MemoryDiagnoser]
public class NotePlanBenchmark
{
    private NoteRequest request = null!;

    /// <summary>Which notes are in use.</summary>
    [Params("USD 1-100", "EUR 5-500")]
    public string Notes { get; set; } = "";

    [GlobalSetup]
    public void Setup()
    {
        request = Notes[..3] == "USD"
            ? BenchmarkRequests.Make("USD", 1, 2, 5, 10, 20, 50, 100)
            : BenchmarkRequests.Make("EUR", 5, 10, 20, 50, 100, 200, 500);
        NotePlan plan = NotePlanner.Plan(request);
        if (!plan.Proven || (plan.WithdrawTotal.MinorUnits, plan.NoteCount) != CpSatNotePlan.Solve(request))
        {
            throw new InvalidOperationException("The two plans are not equally good.");
        }
    }

    [Benchmark(Baseline = true)]
    public NotePlan Ours() => NotePlanner.Plan(request);

    [Benchmark]
    public (long Withdrawn, long Notes) CpSat() => CpSatNotePlan.Solve(request);
}
