using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using static Payday.Statements.Tests.Learning.MadeAccount;

namespace Payday.Statements.Tests.Learning;

public sealed class AccountHistoryTests
{
    [Fact]
    public void Of_TheSameFileTwiceAndOverlaps_EachLineOnce()
    {
        StatementLine[] all = [.. HalfYear().OrderBy(line => line.Date)];
        Statement early = Of("FI1", "2026-01-01", "2026-04-15", all.Where(line => line.Date <= Day("2026-04-15")));
        Statement late = Of("FI1", "2026-03-01", "2026-06-30", all.Where(line => line.Date >= Day("2026-03-01")));

        AccountHistory history = Assert.Single(AccountHistory.Of([late, early, late, early]));

        Assert.Equal(all.Select(line => (line.Date, line.Amount, line.Party)).Order(), history.Lines.Select(line => (line.Date, line.Amount, line.Party)).Order());
        Assert.Equal((Day("2026-01-01"), Day("2026-06-30")), (history.From, history.To));
    }

    [Fact]
    public void Of_TwinsOfOneDay_StayTwo()
    {
        StatementLine coffee = Line("2026-01-05", -3.20m, "Lumiere Cafe");

        Assert.Equal(2, Assert.Single(AccountHistory.Of([Of("", "2026-01-01", "2026-01-31", coffee, coffee)])).Lines.Length);
    }

    // Two formats word a line differently. On the last day of the first file another line of that amount may have come later.
    [Theory]
    [InlineData("2026-01-20", 1)]
    [InlineData("2026-01-31", 2)]
    public void Of_OtherWordsForOneAmountAndDay_AreOneLineWithinKnownDays(string date, int lines)
    {
        Statement first = Of("", "2026-01-01", "2026-01-31", Line(date, -12m, "Corner Grocer"));
        Statement second = Of("", "2026-01-10", "2026-02-28", Line(date, -12m, "CARD PURCHASE CORNER GR"));

        Assert.Equal(lines, Assert.Single(AccountHistory.Of([first, second])).Lines.Length);
    }

    [Fact]
    public void Of_AStatementMissingInBetween_IsNamed()
    {
        Statement january = Of("FI1", "2026-01-01", "2026-01-31", Line("2026-01-05", -3m, "A")).Closing(100m);
        Statement march = Of("FI1", "2026-03-01", "2026-03-31", Line("2026-03-05", -3m, "B")) with { Opening = new Balance(Euros(80m), Day("2026-03-01"), 0) };

        AccountHistory history = Assert.Single(AccountHistory.Of([march, january]));

        Assert.Equal((Day("2026-02-01"), Euros(-20m)), (history.Missing.Single().MissingFrom!.Value, history.Missing.Single().Missing!.Value));
    }

    [Fact]
    public void Of_Closing_IsThatOfTheLatestStatement()
    {
        ImmutableArray<AccountHistory> histories = AccountHistory.Of(
        [
            Of("FI1", "2026-02-01", "2026-02-28", Line("2026-02-05", -3m, "A")).Closing(97m),
            Of("FI1", "2026-01-01", "2026-01-31", Line("2026-01-05", -3m, "A")).Closing(100m),
            Of("FI2", "2026-01-01", "2026-01-31", Line("2026-01-05", -3m, "A")),
        ]);

        Assert.Equal([("FI1", "97.00"), ("FI2", null)], histories.Select(history => (history.Account, history.Closing?.Amount.ToPlain())));
        Assert.Equal(Day("2026-02-28"), histories[0].ClosedOn);
    }
}
