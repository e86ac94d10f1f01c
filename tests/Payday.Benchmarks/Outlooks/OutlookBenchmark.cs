using System.Collections.Immutable;
using System.Reflection;
using BenchmarkDotNet.Attributes;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Outlooks;
using Payday.Store.HouseholdFiles;

namespace Payday.Benchmarks.Outlooks;

/// <summary>26 paydays ahead: of the demo household, and of one with 500 pots, bills and debts together.</summary>
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
        large = Book.Begin(Grown(household, 500));
    }

    [Benchmark]
    public Outlook Demo() => Outlook.Of(demo, Paydays).Value!;

    [Benchmark]
    public Outlook FiveHundredItems() => Outlook.Of(large, Paydays).Value!;

    // The same bills, debts and pots again and again under other names, and pay that carries them.
    private static Household Grown(Household household, int items)
    {
        int times = items / (household.Bills.Length + household.Debts.Length + household.Pots.Length);
        return household with
        {
            Sources = [.. household.Sources.Select(source => source with { Expected = source.Expected * times })],
            Bills = [.. Again(household.Bills, times, (bill, i) => bill with { Id = new BillId($"{bill.Id.Text}-{i}"), Name = $"{bill.Name} {i}" })],
            Debts = [.. Again(household.Debts, times, (debt, i) => debt with { Id = new DebtId($"{debt.Id.Text}-{i}"), Name = $"{debt.Name} {i}" })],
            Pots = [.. Again(household.Pots, times, (pot, i) => pot with { Id = new PotId($"{pot.Id.Text}-{i}"), Name = $"{pot.Name} {i}", Rank = (pot.Rank * times) + i })],
            Opening = household.Opening with { SetAside = ImmutableSortedDictionary<BillId, Core.Amounts.Money>.Empty, Pots = ImmutableSortedDictionary<PotId, Core.Amounts.Money>.Empty },
        };
    }

    private static IEnumerable<T> Again<T>(ImmutableArray<T> items, int times, Func<T, int, T> again) =>
        Enumerable.Range(0, times).SelectMany(i => items.Select(item => again(item, i)));
}
