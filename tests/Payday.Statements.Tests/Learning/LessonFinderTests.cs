using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Tests.Made;
using static Payday.Statements.Tests.Learning.MadeAccount;

namespace Payday.Statements.Tests.Learning;

public sealed class LessonFinderTests
{
    [Fact]
    public void Of_HalfAYear_HasBillsIncomesHabitsAndMonths()
    {
        Lessons lessons = LessonFinder.Of([HalfYearStatement()])!;

        Assert.Equal(["Tidewater Works"], lessons.Incomes.Select(income => income.Name));
        Assert.Equal(["Northlane Rent", "Storage Locker", "Farnet Internet"], lessons.Bills.Select(bill => bill.Name));
        Assert.Equal(["Cash", "Corner Grocer", "Lamp Yard"], lessons.Habits.Select(habit => habit.Name).Order(StringComparer.Ordinal));
        Assert.Equal(6, lessons.Months.Length);
        Assert.All(lessons.Months, month => Assert.Equal(Euros(1840.50m), month.In));
        Assert.Equal(
            -Money.Sum(HalfYear().Where(line => line.Amount.IsNegative).Select(line => line.Amount), MadeStatements.Euro),
            Money.Sum(lessons.Months.Select(month => month.Out), MadeStatements.Euro));
        Assert.Equal((false, false, 0), (lessons.IsTooShort, lessons.LeavesOut, lessons.Transfers));
    }

    // 25 weeks of 38 to 44 with one line each: the week's median is one of them. The lamp comes up once and is no habit.
    [Fact]
    public void Of_Habits_HaveTheMedianWeekWithItsRange()
    {
        Habit[] habits = [.. LessonFinder.Of([HalfYearStatement()])!.Habits];

        Habit food = habits.Single(habit => habit.Name == "Corner Grocer");
        Assert.True(food.IsWeekly);
        Assert.InRange(food.PerWeek!.Median.ToDecimal(), 38m, 44m);
        Assert.True(food.PerWeek.Low <= food.PerWeek.Median && food.PerWeek.Median <= food.PerWeek.High);
        Assert.False(habits.Single(habit => habit.Name == "Lamp Yard").IsUsual);
        Habit cash = habits.Single(habit => habit.Name == "Cash");
        Assert.Equal(("200.00", 6), (cash.PerMonth!.Median.ToPlain(), cash.PerMonth.Periods));
    }

    [Fact]
    public void Of_Changes_AreANewAmountAndALineThatStopped()
    {
        Recurring[] bills = [.. LessonFinder.Of([HalfYearStatement()])!.Bills];

        Assert.Equal(
            new RecurringChange(RecurringChangeKind.Amount, Day("2026-05-12"), Euros(4m)),
            Assert.Single(bills.Single(bill => bill.Name == "Farnet Internet").Changes));
        Assert.Equal(
            new RecurringChange(RecurringChangeKind.Stopped, Day("2026-04-03"), Euros(0m)),
            Assert.Single(bills.Single(bill => bill.Name == "Storage Locker").Changes));
    }

    [Theory]
    [InlineData("2026-03-20", true)]
    [InlineData("2026-03-21", false)]
    public void Of_LessThanThreeMonths_SaysNothingOfHabits(string to, bool isTooShort)
    {
        Lessons lessons = LessonFinder.Of([Of("", "2026-01-01", to, HalfYear().Where(line => line.Date <= Day(to)))])!;

        Assert.Equal(isTooShort, lessons.IsTooShort);
        Assert.Equal(isTooShort, lessons.Bills.IsEmpty);
    }

    [Fact]
    public void Of_MoreThanTwoYears_LooksAtTheLatestTwo()
    {
        StatementLine[] lines = [.. Enumerable.Range(0, 30).Select(month => Line("2024-01-05", -10m, "Tunebox", LineKind.DirectDebit) with { Date = Day("2024-01-05").PlusMonths(month) })];

        Lessons lessons = LessonFinder.Of([Of("", "2024-01-01", "2026-06-30", lines)])!;

        Assert.True(lessons.LeavesOut);
        Assert.Equal((Day("2024-07-01"), 24), (lessons.Span.Start, Assert.Single(lessons.Bills).Lines.Length));
    }

    [Fact]
    public void Of_TransfersBetweenOwnAccounts_AreNoIncomeAndNoSpending()
    {
        StatementLine[] out1 = [.. Monthly(6, 26, -100m, "Mira Alder", LineKind.StandingOrder).Select(line => line with { PartyAccount = "FI2" })];
        StatementLine[] in2 = [.. Monthly(6, 26, 100m, "Mira Alder").Select(line => line with { PartyAccount = "FI1" })];

        Lessons lessons = LessonFinder.Of([Of("FI1", "2026-01-01", "2026-06-30", [.. HalfYear(), .. out1]), Of("FI2", "2026-01-01", "2026-06-30", in2)])!;

        Assert.Equal(12, lessons.Transfers);
        Assert.DoesNotContain(lessons.Bills.Concat(lessons.Incomes), one => one.Name == "Mira Alder");
        Assert.Equal(Euros(1840.50m), lessons.Months[0].In);
    }

    // What the card bought is spent; paying the card's bill from the account is not spent again.
    [Fact]
    public void Of_ACardAndTheAccountThatPaysIt_CountEachPurchaseOnce()
    {
        StatementLine[] bought = [.. Enumerable.Range(0, 26).Select(week => Line("2026-01-02", -20m, "Millers Market", LineKind.Card) with { Date = Day("2026-01-02").PlusDays((7 * week) + (week % 4)) })];
        StatementLine[] settled = [.. Enumerable.Range(1, 6).Select(month => Line("2026-01-15", 87m, "Payment, thank you") with { Date = new LocalDate(2026, month, 15) })];
        Statement card = Of("4000", "2026-01-01", "2026-06-30", [.. bought, .. settled]) with { IsCard = true };
        Statement account = Of("FI1", "2026-01-01", "2026-06-30", [.. HalfYear(), .. Monthly(6, 14, -87m, "Card centre", LineKind.DirectDebit)]);

        Lessons lessons = LessonFinder.Of([account, card])!;

        Assert.Equal(12, lessons.Transfers);
        Assert.DoesNotContain(lessons.Bills, bill => bill.Name == "Card centre");
        Assert.Contains(lessons.Habits, habit => habit.Name == "Millers Market" && habit.Total == Euros(520m));
        Assert.Equal(["Tidewater Works"], lessons.Incomes.Select(income => income.Name));
    }

    [Fact]
    public void Of_AnotherCurrency_IsLeftOutAndNamed()
    {
        var dollar = Currency.FromCode("USD");
        Statement other = Of("US1", "2026-01-01", "2026-06-30", []) with
        {
            Currency = dollar,
            Lines = [new StatementLine(Day("2026-01-05"), Money.FromMinorUnits(-100, dollar))],
        };

        Assert.Equal([dollar], LessonFinder.Of([other, HalfYearStatement()])!.OtherCurrencies);
        Assert.Equal(dollar, LessonFinder.Of([other, HalfYearStatement()], dollar)!.Currency);
        Assert.Null(LessonFinder.Of([other], MadeStatements.Euro));
        Assert.Null(LessonFinder.Of([]));
    }

    [Fact]
    public void Of_LinesWhosePotIsKnown_AreSpendingOfThatPot()
    {
        Lessons lessons = LessonFinder.Of([HalfYearStatement()], null, line => line.Party.StartsWith("Corner", StringComparison.Ordinal) ? "Food" : null)!;

        Assert.Contains(lessons.Habits, habit => habit.Name == "Food" && habit.Lines.Length == 25);
        Assert.DoesNotContain(lessons.Habits, habit => habit.Name == "Corner Grocer");
    }

    [Theory]
    [InlineData("NORTHLANE RENT 0042", "", "Northlane Rent")]
    [InlineData("", "CARD PURCHASE CORNER GROCER 12/03", "Corner Grocer")]
    [InlineData("", "Direct debit to Farnet Internet ref 77", "Farnet Internet ref")]
    [InlineData("Bank of Alder", "", "Bank of Alder")]
    [InlineData("", "CARD PAYMENT", "Card Payment")]
    [InlineData("H2O", "", "H2O")]
    [InlineData("", "", "")]
    public void NameOf_ALine_IsWithoutTheBanksNumbers(string party, string text, string name) =>
        Assert.Equal(name, PartyName.Of([Line("2026-01-01", -1m, party) with { Text = text }]));
}
