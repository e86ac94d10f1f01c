using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Histories;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Text;

namespace Payday.Tests.Reports;

public class HistoryReportTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");

    private static readonly Gen<PotHistory> SomeHistory = Gen.Select(
        Gen.Int[0, 4_000], Gen.Enum<PotEvent>(), Gen.Long[-2_000_000, 2_000_000], Gen.Long[0, 2_000_000].Nullable(), Gen.Char.AlphaNumeric.Array[0, 30].Select(letters => new string(letters)))
        .Array[1, 30].Select(all =>
        {
            ImmutableArray<PotHistoryLine> lines =
            [
                .. all.Select(one => new PotHistoryLine(
                    new LocalDate(2023, 1, 1).PlusDays(one.Item1), one.Item2, Money.FromMinorUnits(one.Item3, Usd), one.Item4 is { } left ? Money.FromMinorUnits(left, Usd) : null, one.Item5))
                    .OrderBy(line => line.Date),
            ];
            return new PotHistory(new PotId("food"), lines, [.. lines.Select(line => line.Date).Distinct().Select((day, i) => new PotBalance(day, Money.FromMinorUnits(i * 12_345L, Usd)))], 0, null);
        });

    /// <summary>Whichever lines are looked at, they have the columns that all of them together need.</summary>
    [Fact]
    public void Lines_OfAnyHistory_HaveTheirAmountsBelowOneAnother() =>
        Gen.Select(SomeHistory, Gen.Int[90, 120]).Sample((history, width) =>
        {
            string[] lines = [.. HistoryReport.Lines(history, NumberStyle.CommaPoint, width)];
            string[] rows = lines[^history.Lines.Length..];
            string header = lines[^(history.Lines.Length + 2)];
            int amounts = header.IndexOf("amount", StringComparison.Ordinal) + "amount".Length;
            for (int i = 0; i < rows.Length; i++)
            {
                PotHistoryLine line = history.Lines[^(i + 1)];
                Assert.True(TextColumns.Width(rows[i]) <= width);
                Assert.EndsWith($" {(line.Change is { IsPositive: true } ? "+" : "")}{(line.Change ?? line.Amount).ToString(NumberStyle.CommaPoint)}", rows[i][..amounts], StringComparison.Ordinal);
                Assert.StartsWith($"{DateText.Short(line.Date)} {line.Date.Year}", rows[i], StringComparison.Ordinal);
            }
        });

    [Fact]
    public void On_OfAnyHistory_IsTheLastBalanceByThen() =>
        Gen.Select(SomeHistory, Gen.Int[-10, 4_010]).Sample((history, day) =>
        {
            LocalDate date = new LocalDate(2023, 1, 1).PlusDays(day);
            Assert.Equal(history.Balances.LastOrDefault(balance => balance.Date <= date)?.Has, history.On(date));
        });

    [Fact]
    public void Spending_OfAnyHistory_HasTheCardsSinceTheCountBefore() => SomeHistory.Sample(history =>
    {
        LocalDate? since = null;
        PotHistoryLine[] counts = [.. history.Lines.Where(line => line.Kind == PotEvent.Counted)];
        foreach ((PotHistoryLine count, CountedSpending spending) in counts.Zip(history.Spending))
        {
            Money card = Money.Sum(history.Lines.Where(line => line.Kind == PotEvent.Card && line.Date <= count.Date && !(line.Date <= since)).Select(line => line.Amount), Usd);
            Assert.Equal((count.Date, count.Amount, card), (spending.Date, spending.Cash, spending.Card));
            since = count.Date;
        }

        Assert.Equal(counts.Length, history.Spending.Length);
    });
}
