using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Tests.Habits;
using Payday.Statements.Tests.Made;
using static Payday.Statements.Tests.Learning.MadeAccount;

namespace Payday.Statements.Tests.Learning;

public sealed class HouseholdProposalTests
{
    private static readonly LocalDate Today = Day("2026-07-03");

    [Fact]
    public void Of_HalfAYear_ProposesWhatGoesOn()
    {
        ImmutableArray<ProposedItem> items = Proposals(HalfYearStatement());

        Assert.Equal(
            ["income Tidewater Works", "bill Northlane Rent", "bill Farnet Internet", "pot Cash", "pot Corner Grocer", "balance In the account"],
            items.Select(item => item.Key));
        SourceDraft wage = items.OfType<ProposedItem.Source>().Single().Item;
        Assert.Equal((1840.50m, ScheduleKind.Monthly, new MonthDay.Numbered(25)), (wage.Expected!.Value, wage.Schedule!.Kind!.Value, wage.Schedule.Day!));
        BillDraft internet = items.OfType<ProposedItem.Bill>().Single(bill => bill.Name == "Farnet Internet").Item;
        Assert.Equal((34m, new MonthDay.Numbered(12)), (internet.Amount!.Value, internet.Schedule!.Day!));
    }

    // Whole ones of the smallest note, rounded up; Corner Grocer is some 40 a week, cash 200 a month as it is fetched every other week.
    [Theory]
    [InlineData(5, 45)]
    [InlineData(20, 60)]
    public void Of_Pots_GetWholeNotes(int note, int weekly)
    {
        PotDraft food = HouseholdProposals.Of(LessonFinder.Of([HalfYearStatement()])!, note, Today).OfType<ProposedItem.Pot>().Single(pot => pot.Name == "Corner Grocer").Item;

        Assert.Equal((FillPer.Week, weekly), (food.Per!.Value, food.Amount!.Value));
    }

    [Theory]
    [InlineData("2026-07-03", "2026-07-01")]
    [InlineData("2026-06-30", "2026-06-30")]
    public void Of_Account_BeginsOnTheDayAfterAndNotInTheFuture(string today, string start)
    {
        ProposedItem.Account account = HouseholdProposals.Of(LessonFinder.Of([HalfYearStatement()])!, 5, Day(today)).OfType<ProposedItem.Account>().Single();

        Assert.Equal((712.40m, Day(start)), (account.Amount, account.Start));
        HouseholdDraft draft = account.In(new HouseholdDraft());
        Assert.Equal((Day(start), 712.40m), (draft.Start, draft.Opening!.Account));
    }

    [Fact]
    public void Of_TwoAccountsOfDifferentDays_TakesOnlyTheMainOne()
    {
        Statement second = Of("FI2", "2026-01-01", "2026-05-31", Monthly(5, 2, -1m, "A")).Closing(50m);

        Assert.Equal(712.40m, Proposals(HalfYearStatement(), second).OfType<ProposedItem.Account>().Single().Amount);
        Assert.Equal(762.40m, Proposals(HalfYearStatement(), second with { To = Day("2026-06-30"), Closing = second.Closing! with { Date = Day("2026-06-30") } }).OfType<ProposedItem.Account>().Single().Amount);
        Assert.Empty(Proposals(Of("FI1", "2026-01-01", "2026-06-30", HalfYear())).OfType<ProposedItem.Account>());
    }

    [Theory]
    [InlineData("Harbour Loan 77", true)]
    [InlineData("Harbour Loans", true)]
    [InlineData("Sloane Street Rent", false)]
    public void Of_WordsOfADebt_AreAQuestion(string name, bool mayBeDebt)
    {
        ProposedItem.Bill bill = Proposals(Of("", "2026-01-01", "2026-06-30", Monthly(6, 9, -120m, name, LineKind.StandingOrder))).OfType<ProposedItem.Bill>().Single();

        Assert.Equal(mayBeDebt, bill.MayBeDebt);
        DebtDraft debt = bill.AsDebt;
        Assert.Equal((null, null, 120m, new MonthDay.Numbered(9)), (debt.Balance, debt.Rate, debt.Minimum!.Fixed!.Value, debt.Due!));
    }

    // 2026-02-28, 03-28 and 06-27 are Saturdays.
    [Theory]
    [InlineData("2026-01-28 2026-02-27 2026-03-27 2026-04-28 2026-05-28", Shift.Before)]
    [InlineData("2026-01-28 2026-03-02 2026-03-30 2026-04-28 2026-05-28", Shift.After)]
    [InlineData("2026-01-28 2026-02-28 2026-03-28 2026-04-28 2026-05-28", Shift.None)]
    public void Of_DaysOnWeekends_ShowWhereTheyMove(string days, Shift shift)
    {
        StatementLine[] lines = [.. days.Split(' ').Select(day => Line(day, -50m, "Hillside Water", LineKind.DirectDebit))];

        Assert.Equal(shift, Proposals(Of("", "2026-01-01", "2026-06-10", lines)).OfType<ProposedItem.Bill>().Single().Item.Shift);
    }

    [Fact]
    public void Of_TwoOfOneCompany_HaveTwoNames()
    {
        Statement both = Of("", "2026-01-01", "2026-06-30", [.. Monthly(6, 4, -10m, "Mobilo", LineKind.DirectDebit), .. Monthly(6, 19, -29m, "Mobilo", LineKind.DirectDebit)]);

        Assert.Equal(["Mobilo", "Mobilo 2"], Proposals(both).Select(item => item.Name));
    }

    // Whatever was read: all of it together is a household that stands the check, and taking the same twice is refused by its name alone.
    [Fact]
    public void Of_MadeHistories_AllTakenIsAHousehold()
    {
        for (int seed = 1; seed <= 40; seed++)
        {
            var history = new MadeHistory(seed);
            Statement statement = Of("", "2024-01-01", "2024-12-31", history.Lines) with { To = history.To };
            ImmutableArray<ProposedItem> items = Proposals(statement.Closing(1000m));
            HouseholdDraft draft = items.Aggregate(Bare, (household, item) => item.In(household));

            Result<Household> household = HouseholdCheck.Of(draft);
            Assert.True(household.Ok, $"seed {seed}: {string.Join("; ", household.Faults)}");
            Assert.Equal(items.Length, items.Select(item => item.Key).Distinct(StringComparer.OrdinalIgnoreCase).Count());
            Assert.Equal(items.Length - 1, household.Value.Sources.Length + household.Value.Bills.Length + household.Value.Pots.Length);
        }
    }

    private static HouseholdDraft Bare => new()
    {
        Name = "Alder flat",
        Start = Today,
        Settings = new() { Currency = MadeStatements.Euro, FillDay = IsoDayOfWeek.Friday, Holidays = new() { Set = HolidaySet.None } },
        Opening = new() { Account = 0 },
    };

    private static ImmutableArray<ProposedItem> Proposals(params Statement[] statements) =>
        HouseholdProposals.Of(LessonFinder.Of(statements)!, 5, Today);
}
