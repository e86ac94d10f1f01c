using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Tests.Made;
using static Payday.Statements.Tests.Learning.MadeAccount;

namespace Payday.Statements.Tests.Learning;

public sealed class HouseholdComparisonTests
{
    private static IEnumerable<StatementLine> Wages => Monthly(6, 25, 1840.50m, "Tidewater Works", LineKind.Pay);

    [Fact]
    public void Of_TheSameHousehold_SaysNothing() =>
        Assert.Empty(Of([Bill("Rent", 640m, 1), Bill("Internet", 34m, 12)], Wages, Monthly(6, 1, -640m, "Northlane Rent", LineKind.StandingOrder), Monthly(6, 12, -34m, "Farnet Internet", LineKind.DirectDebit)));

    [Fact]
    public void Of_HalfAYear_NamesWhatIsNewWhatDiffersAndWhatStopped()
    {
        ImmutableArray<HouseholdFinding> found = Of([Bill("Internet", 30m, 12), Bill("Storage locker", 42m, 3), Bill("Choir", 15m, 20)], HalfYear());

        HouseholdFinding.NotThere rent = found.OfType<HouseholdFinding.NotThere>().Single();
        Assert.Equal("Northlane Rent", rent.Name);
        HouseholdFinding.OtherAmount internet = found.OfType<HouseholdFinding.OtherAmount>().Single();
        Assert.Equal(("Internet", Euros(30m), Euros(34m), Day("2026-05-12")), (internet.Name, internet.Here, internet.Found, internet.Since!.Value));
        Assert.Equal([("Storage locker", Day("2026-04-03")), ("Choir", null)], found.OfType<HouseholdFinding.NoLine>().Select(line => (line.Name, line.Last)));
        Assert.Equal(4, found.Length);
    }

    // Another name, but its amount and days: it is that bill. Its days alone: it may be that bill, and a guess says nothing.
    [Theory]
    [InlineData(640, 1, 0)]
    [InlineData(655, 1, 0)]
    [InlineData(655, 15, 1)]
    public void Of_ABillUnderAnotherName_IsNotCalledNew(int amount, int day, int isNew)
    {
        ImmutableArray<HouseholdFinding> found = Of([Bill("Shelter", amount, day)], Monthly(6, 1, -640m, "Northlane", LineKind.StandingOrder));

        Assert.Equal(isNew, found.Count(finding => finding is HouseholdFinding.NotThere));
    }

    [Theory]
    [InlineData(59, false)]
    [InlineData(50.5, false)]
    [InlineData(60, false)]
    [InlineData(48, true)]
    [InlineData(75, true)]
    public void Of_ABillThatVaries_DiffersOutsideItsRange(double amount, bool differs)
    {
        decimal[] paid = [50m, 52m, 48m, 60m, 51m, 50.5m, 49m, 59m];
        StatementLine[] lines = [.. paid.Select((one, i) => Line("2026-01-12", -one, "Brightwire Power") with { Date = new LocalDate(2026, i + 1, 12), Mandate = "M-1" })];

        ImmutableArray<HouseholdFinding> found = Of([Bill("Power", (decimal)amount, 12)], lines);

        Assert.Equal(differs, found.Any(finding => finding is HouseholdFinding.OtherAmount));
        Assert.All(found.OfType<HouseholdFinding.OtherAmount>(), finding => Assert.Equal(Euros(59m), finding.Found));
    }

    // Two lines speak of one bill: which of them is it can't be known, and nothing is said of its amount.
    [Fact]
    public void Of_TwoSeriesForOneBill_SaysNothingOfItsAmount() =>
        Assert.Empty(Of([Bill("Mobilo", 12m, 10)], Wages, Monthly(6, 4, -10m, "Mobilo", LineKind.DirectDebit), Monthly(6, 19, -29m, "Mobilo", LineKind.DirectDebit)));

    [Fact]
    public void Of_ADebtsMinimum_IsNoBillThatIsMissing()
    {
        HouseholdDraft draft = Draft([]) with
        {
            Debts = [new() { Name = "Harbour loan", Balance = 900m, Rate = 0.05m, Minimum = new() { Kind = MinimumKind.Fixed, Fixed = 120m }, Due = new MonthDay.Numbered(9) }],
        };

        Assert.Empty(HouseholdComparison.Of(
            LessonFinder.Of([MadeAccount.Of("", "2026-01-01", "2026-06-30", [.. Wages, .. Monthly(6, 9, -120m, "Harbour Loan Office", LineKind.StandingOrder)])])!,
            HouseholdCheck.Of(draft).Value!));
    }

    // What the household has planned from a day on counts from that day: nothing is said of it twice.
    [Theory]
    [InlineData("2026-05-01", 34, false)]
    [InlineData("2026-06-13", 34, false)]
    [InlineData("2026-06-14", 34, true)]
    [InlineData("2026-05-01", 35, true)]
    public void Of_AnAmountThatChangesInTheHousehold_IsThatAfterTheLastLine(string from, int amount, bool differs)
    {
        BillDraft internet = Bill("Internet", 30m, 12) with { Later = [new() { From = Day(from), Amount = amount }] };

        Assert.Equal(differs, Of([internet], Wages, Internet).Any(finding => finding is HouseholdFinding.OtherAmount));
    }

    [Fact]
    public void Beside_WhatIsNewOrDiffers_IsProposedAndLeadsToNoDifference()
    {
        HouseholdDraft draft = Draft([Bill("Internet", 30m, 12), Bill("Rent", 640m, 1)]);
        Lessons lessons = LessonFinder.Of([HalfYearStatement()])!;

        ImmutableArray<ProposedItem> items = HouseholdProposals.Beside(lessons, HouseholdCheck.Of(draft).Value!);
        Assert.Equal(["amount Internet"], items.Select(item => item.Key));
        HouseholdDraft taken = items[0].In(HouseholdDraft.Of(HouseholdCheck.Of(draft).Value!));
        Household household = HouseholdCheck.Of(taken).Value!;

        Assert.Equal(Euros(30m), household.Bills[0].AmountOn(Day("2026-06-12")));
        Assert.Equal(Euros(34m), household.Bills[0].AmountOn(Day("2026-06-13")));
        Assert.Empty(HouseholdProposals.Beside(lessons, household));
        Assert.Null(((ProposedItem.NewAmount)items[0]).OutOf(taken).Bills!.Value[0].Later);
    }

    // A household that names one of its own like what was found gets another name and id.
    [Fact]
    public void Beside_ANameThatIsThere_GetsAnother()
    {
        HouseholdDraft draft = Draft([Bill("Internet", 34m, 12), Bill("Rent", 640m, 1)]) with { Bills = [Bill("Internet", 34m, 12), Bill("Rent", 640m, 1), Bill("Tunebox", 9m, 2)] };
        IEnumerable<StatementLine> two = [.. Monthly(6, 2, -9m, "Tunebox", LineKind.DirectDebit), .. Monthly(6, 20, -27m, "TUNEBOX", LineKind.DirectDebit).Select(line => line with { Mandate = "M-9", Party = "" })];

        ImmutableArray<ProposedItem> items = HouseholdProposals.Beside(
            LessonFinder.Of([MadeAccount.Of("", "2026-01-01", "2026-06-30", [.. Wages, .. Internet, .. two.Select(line => line with { Text = line.Party.Length == 0 ? "Choir" : "" })])])!,
            HouseholdCheck.Of(draft).Value!);

        Assert.Equal(["bill Choir"], items.Select(item => item.Key));
        Assert.True(HouseholdCheck.Of(items[0].In(HouseholdDraft.Of(HouseholdCheck.Of(draft).Value!))).Ok);
    }

    [Fact]
    public void Beside_AChangePlannedForLater_IsLeftAlone()
    {
        BillDraft internet = Bill("Internet", 30m, 12) with { Later = [new() { From = Day("2026-09-01"), Amount = 33m }] };

        Assert.DoesNotContain(HouseholdProposals.Beside(LessonFinder.Of([HalfYearStatement()])!, HouseholdCheck.Of(Draft([internet])).Value!), item => item is ProposedItem.NewAmount);
    }

    private static IEnumerable<StatementLine> Internet => HalfYear().Where(line => line.Party == "Farnet Internet");

    private static ImmutableArray<HouseholdFinding> Of(BillDraft[] bills, params IEnumerable<StatementLine>[] lines)
    {
        StatementLine[] all = [.. lines.SelectMany(some => some)];
        Statement statement = MadeAccount.Of("", "2026-01-01", "2026-06-30", all) with { To = LocalDate.Max(Day("2026-06-30"), all.Max(line => line.Date)) };
        return HouseholdComparison.Of(LessonFinder.Of([statement])!, HouseholdCheck.Of(Draft(bills)).Value!);
    }

    private static HouseholdDraft Draft(BillDraft[] bills) => new()
    {
        Name = "Alder flat",
        Start = Day("2026-01-01"),
        Settings = new() { Currency = MadeStatements.Euro, FillDay = IsoDayOfWeek.Friday, Holidays = new() { Set = HolidaySet.None } },
        Opening = new() { Account = 0 },
        Sources = [new() { Name = "Tidewater", Expected = 1840.50m, Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(25) }, Shift = Shift.None }],
        Bills = [.. bills],
    };

    private static BillDraft Bill(string name, decimal amount, int day) => new()
    {
        Name = name,
        Amount = amount,
        Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(day) },
        Shift = Shift.None,
        Essential = true,
    };
}
