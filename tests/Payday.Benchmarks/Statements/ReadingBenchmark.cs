using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Files;
using Payday.Statements.Reading;

namespace Payday.Benchmarks.Statements;

/// <summary>Reading 10,000 lines of CSV with a column of balances; the goal for the published program is 150 ms in all.</summary>
[MemoryDiagnoser]
public class ReadingBenchmark
{
    private byte[] bytes = [];

    [GlobalSetup]
    public void Setup()
    {
        var random = new Random(5);
        var text = new StringBuilder("Buchungstag;Valuta;Name;Verwendungszweck;Betrag;Saldo\n");
        long balance = 1_000_000;
        LocalDate day = new(2006, 1, 1);
        for (int i = 0; i < 10_000; i++)
        {
            day = day.PlusDays(random.Next(2));
            long amount = random.Next(20) == 0 ? 200_000 : -random.Next(100, 20_000);
            balance += amount;
            string date = LocalDatePattern.CreateWithInvariantCulture("dd.MM.uuuu").Format(day);
            text.Append(CultureInfo.InvariantCulture, $"{date};{date};\"Shop {random.Next(500)}\";Purchase {random.Next()} at the pier;{Cents(amount)};{Cents(balance)}\n");
        }

        bytes = Encoding.UTF8.GetBytes(text.ToString());
    }

    [Benchmark]
    public StatementFile Csv() => StatementReader.Read(bytes, new ReadingOptions { Currency = Currency.FromCode("EUR") });

    private static string Cents(long minorUnits) => Money.FromMinorUnits(minorUnits, Currency.FromCode("EUR")).ToString(NumberStyle.PointComma);
}
