using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Ledgers;

/// <summary>Which figure of a month a ledger line is in, by its two ends. 40 moved; each figure that changes is written with its sign.</summary>
public class MonthSummaryTests
{
    private static readonly LocalDate Before = new(2025, 12, 31);

    private static readonly Ledger Rich = Ledger.Empty(Dollars).Add(
        from place in new[] { "account", "cash" }
        from purpose in new[] { "left-to-place", "buffer", "set-aside:rent", "pot:food", "kept-back:food", "owed-back:food", "wallet:food", "for-debt:loan", "for-card:card" }
        select new Movement(0, Before, LedgerEnd.Opening, LedgerEnd.FromKey($"{place}/{purpose}"), Usd(1_000), "opening")).Add(
        [
            new Movement(0, Before, new LedgerEnd.Owed(new DebtId("loan")), LedgerEnd.Opening, Usd(500), "opening"),
            new Movement(0, Before, LedgerEnd.InCash(Purpose.Wallet(new PotId("food"))), LedgerEnd.MissedIn(new PotId("food")), Usd(100), "missing"),
            new Movement(0, Before, LedgerEnd.InCash(Purpose.Wallet(new PotId("food"))), LedgerEnd.SpentFrom(new PotId("food")), Usd(100), "spent"),
        ]);

    [Theory]
    [InlineData("outside/source:wage", "account/left-to-place", "in +")]
    [InlineData("account/left-to-place", "outside/source:wage", "in -")]
    [InlineData("outside/entry:gift", "account/buffer", "in +")]
    [InlineData("outside/entry:interest", "cash/pot:food", "in +")]
    [InlineData("account/buffer", "outside/entry:fee", "spent +")]
    [InlineData("cash/wallet:food", "outside/entry:loss", "spent +")]
    [InlineData("owed/loan", "outside/entry:fee", "")]
    [InlineData("account/set-aside:rent", "outside/bill:rent", "bills +")]
    [InlineData("outside/bill:rent", "account/set-aside:rent", "bills -")]
    [InlineData("account/for-debt:loan", "owed/loan", "paid + owed -")]
    [InlineData("owed/loan", "outside/interest:loan", "interest + owed +")]
    [InlineData("owed/loan", "outside/spending:food", "spent + owed +")]
    [InlineData("outside/spending:food", "owed/loan", "spent - owed -")]
    [InlineData("account/left-to-place", "account/pot:food", "fills +")]
    [InlineData("account/left-to-place", "account/kept-back:food", "fills +")]
    [InlineData("account/kept-back:food", "cash/pot:food", "")]
    [InlineData("cash/pot:food", "cash/wallet:food", "")]
    [InlineData("cash/wallet:food", "cash/owed-back:food", "")]
    [InlineData("cash/pot:food", "account/buffer", "fills -")]
    [InlineData("account/pot:food", "account/for-card:card", "")]
    [InlineData("account/for-card:card", "account/pot:food", "")]
    [InlineData("account/left-to-place", "account/set-aside:rent", "")]
    [InlineData("cash/wallet:food", "outside/spending:food", "spent +")]
    [InlineData("outside/spending:food", "cash/wallet:food", "spent -")]
    [InlineData("cash/wallet:food", "outside/difference:food", "missing +")]
    [InlineData("outside/difference:food", "cash/wallet:food", "missing -")]
    [InlineData("outside/difference:food", "outside/spending:food", "missing - spent +")]
    [InlineData("outside/opening", "account/pot:food", "")]
    public void Line_BetweenTwoEnds_IsIn(string from, string to, string figures)
    {
        // A debt fee is owed all the same, though it is in no other figure.
        string expected = figures.Length == 0 && from == "owed/loan" ? "owed +" : figures;
        MonthSummary march = Of(Line(from, to))[2];

        Assert.Equal(expected.Split(' ', StringSplitOptions.RemoveEmptyEntries).Chunk(2).Select(pair => string.Join(' ', pair)).Order(), Figures(march, Usd(500)).Order());
        Assert.Equal(new YearMonth(2026, 3), march.Month);
    }

    [Fact]
    public void Rounding_IsInNoOtherFigure()
    {
        Ledger ledger = Rich.Add([Line("cash/owed-back:food", "account/buffer"), Line("cash/owed-back:food", "account/buffer")]);
        long last = ledger.Movements[^1].Number;

        Assert.Equal(Usd(80), MonthSummary.OfYear(ledger, 2026, ImmutableHashSet.Create(last, last - 1))[2].Rounding);
        MonthSummary one = MonthSummary.OfYear(ledger, 2026, ImmutableHashSet.Create(last))[2];
        Assert.Equal((Usd(40), Usd(-40)), (one.Rounding, one.Fills));
    }

    // A line that was undone is missing from its own month, whenever that was.
    [Fact]
    public void Line_Undone_IsInNoMonth()
    {
        Ledger ledger = Rich.Add([Line("cash/wallet:food", "outside/spending:food")]);
        Ledger undone = ledger.Add(ledger.Reverse([ledger.Movements[^1].Number], new(2026, 5, 2), "wrong").Value);

        Assert.All(MonthSummary.OfYear(undone, 2026), month => Assert.Empty(Figures(month, Usd(500))));
    }

    // What is owed goes on from month to month and year to year.
    [Fact]
    public void Owed_IsOfTheEndOfTheMonth()
    {
        Ledger ledger = Rich.Add([Line("account/for-debt:loan", "owed/loan"), Line("account/for-debt:loan", "owed/loan") with { Date = new(2026, 4, 30) }]);

        Assert.Equal([Usd(500), Usd(500), Usd(460), Usd(420), Usd(420)], MonthSummary.OfYear(ledger, 2026).Take(5).Select(month => month.Owed));
        Assert.Equal([Usd(420), Usd(420)], MonthSummary.OfYear(ledger, 2027).Take(2).Select(month => month.Owed));
        Assert.Equal(Usd(0), MonthSummary.OfYear(ledger, 2024)[11].Owed);
    }

    // From the month in which the household began to this one, or to that of the last line, which may be dated later.
    [Theory]
    [InlineData("2026-02-10", "2026-02-20", 2, 3)]
    [InlineData("2026-02-10", "2026-05-01", 2, 5)]
    [InlineData("2025-11-30", "2026-03-31", 1, 3)]
    public void OfYear_AreTheMonthsThatHaveSomethingToSay(string start, string today, int first, int last)
    {
        ImmutableArray<MonthSummary> months = MonthSummary.OfYear(Rich.Add([Line("cash/wallet:food", "outside/spending:food")]), 2026, Day(start), Day(today), ImmutableHashSet<long>.Empty);

        Assert.Equal((first, last), (months[0].Month.Month, months[^1].Month.Month));
    }

    private static LocalDate Day(string iso) => NodaTime.Text.LocalDatePattern.Iso.Parse(iso).Value;

    private static Movement Line(string from, string to) => new(0, new(2026, 3, 9), LedgerEnd.FromKey(from), LedgerEnd.FromKey(to), Usd(40), "test");

    private static ImmutableArray<MonthSummary> Of(Movement line) => MonthSummary.OfYear(Rich.Add([line]), 2026);

    private static IEnumerable<string> Figures(MonthSummary month, Money owed) =>
        from figure in new[]
        {
            ("in", month.CameIn), ("bills", month.Bills), ("paid", month.DebtPayments), ("interest", month.Interest), ("fills", month.Fills),
            ("spent", month.Spent), ("owed", month.Owed - owed), ("rounding", month.Rounding), ("missing", month.Missing),
        }
        where !figure.Item2.IsZero
        select $"{figure.Item1} {(figure.Item2 == Usd(40) ? "+" : figure.Item2 == Usd(-40) ? "-" : figure.Item2.ToPlain())}";
}
