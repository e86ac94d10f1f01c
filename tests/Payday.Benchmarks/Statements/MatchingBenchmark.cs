using BenchmarkDotNet.Attributes;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Matching;

namespace Payday.Benchmarks.Statements;

/// <summary>A statement held against the account: a month (goal: 2 ms) and five years at once (goal: 100 ms).</summary>
[MemoryDiagnoser]
public class MatchingBenchmark
{
    private readonly Currency currency = Currency.FromCode("EUR");
    private StatementLine[] lines = [];
    private AccountLine[] entries = [];

    /// <summary>A month's lines, and those of sixty months.</summary>
    [Params(60, 3_600)]
    public int Lines { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        // Two a day; every third has one of nine amounts that come up over and over, some are the bank's or the household's alone.
        var random = new Random(5);
        var first = new LocalDate(2021, 1, 1);
        var all = Enumerable.Range(0, Lines).Select(i =>
        {
            long amount = i % 3 == 0 ? -500L * random.Next(1, 10) : -random.Next(150, 9_000);
            string shop = $"Shop {(char)('A' + random.Next(26))}{(char)('a' + random.Next(26))}{(char)('a' + random.Next(26))}";
            LocalDate day = first.PlusDays(i / 2);
            return (Entry: new AccountLine(i, day, amount, shop, AccountLineKind.CardPurchase),
                Line: new StatementLine(day.PlusDays(random.Next(4)), Money.FromMinorUnits(amount, currency)) { Party = $"{shop} {random.Next(1000, 9999)}" });
        }).ToList();
        lines = [.. all.Where((_, i) => i % 20 != 0).Select(pair => pair.Line).OrderBy(line => line.Date)];
        entries = [.. all.Where((_, i) => i % 20 != 1).Select(pair => pair.Entry)];
    }

    [Benchmark]
    public MatchResult Match() => LineMatcher.Match(lines, entries, new LocalDate(2026, 1, 1));
}
