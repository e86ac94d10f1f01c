using System.Reflection;
using BenchmarkDotNet.Attributes;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Outlooks;
using Payday.Faults;
using Payday.Store.HouseholdFiles;

namespace Payday.Benchmarks.Outlooks;

/// <summary>26 paydays ahead: of the demo household, and of one with 500 pots, bills, debts and sources each.</summary>
public class OutlookBenchmark
{
    private const int Paydays = 26;

    private Book demo = null!;
    private Book large = null!;

    [GlobalSetup]
    public void Begin()
    {
        using Stream file = Assembly.GetExecutingAssembly().GetManifestResourceStream("demo.json")!;
        using var reader = new StreamReader(file);
        Household household = HouseholdFile.Read(reader.ReadToEnd()).Value!;
        demo = Book.Begin(household);
        large = Book.Begin(ManyItems.Of(household, 500));
    }

    [Benchmark]
    public Outlook Demo() => Outlook.Of(demo, Paydays).Value!;

    [Benchmark]
    public Outlook FiveHundredOfEach() => Outlook.Of(large, Paydays).Value!;
}
