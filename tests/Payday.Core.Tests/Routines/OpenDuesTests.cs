using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.ClosedPaydays;
using Payday.Core.Debts;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class OpenDuesTests
{
    private static readonly LocalDate Second = new(2026, 3, 20);
    private static readonly LocalDate Third = new(2026, 4, 3);

    [Fact]
    public void Plan_BillEnteredAfterAClosing_IsAskedAboutWhereItsDueIsPast()
    {
        Book book = Close(Book.Begin(Bare), Friday6March);
        Book later = HouseholdChange.Of(book, Bare with { Bills = [Bill("Phone", 40, new(2026, 1, 12))] }).Value!;

        DueRow due = Assert.Single(Plan(later, Second).Bills.Dues);

        Assert.Equal((new LocalDate(2026, 3, 12), Usd(40), true), (due.Date, due.Amount, due.Paid));
        Assert.Equal([new(2026, 4, 12)], Dates(Close(later, Second), new(2026, 4, 16)));
    }

    [Theory]
    [InlineData(10, 12, "04-12")] // paid already: April is next, on its new day
    [InlineData(10, 25, "04-25")] // and where the new day lies in the next period, March isn't paid twice
    [InlineData(5, 25, "04-25")] // written down by the payday before the last one
    public void OfBills_DateChangedAfterItWasPaid_IsNotDueAgainThatMonth(int day, int newDay, string next)
    {
        Household home = Bare with { Start = new(2026, 2, 20), Bills = [Bill("Phone", 40, new(2026, 3, day))] };
        Book book = Close(Close(Close(Book.Begin(home), new(2026, 2, 20)), Friday6March), Second);
        Book changed = book with { Household = home with { Bills = [Bill("Phone", 40, new(2026, 3, newDay))] } };

        Assert.Equal([DateOf(next)], Dates(changed, new(2026, 4, 30)));
    }

    [Fact]
    public void OfBills_DateOrAmountChangedWhileItWaits_FollowsTheBillUnlessItWasDecided()
    {
        LocalDate tenth = new(2026, 3, 10);
        Household home = Bare with { Bills = [Bill("Rent", 300, tenth), Bill("Phone", 40, tenth)] };
        RoutineDraft draft = new RoutineDraft(Friday6March) with
        {
            Dues = ImmutableSortedDictionary<DueKey, DueDecision>.Empty.Add(new DueKey(new BillId("rent"), tenth), new DueDecision(Usd(315), null)),
        };
        Book book = Closing.Of(Routine.Plan(Book.Begin(home), draft).Value!).Value!;
        Book changed = book with { Household = home with { Bills = [Bill("Rent", 320, new(2026, 3, 14)), Bill("Phone", 45, new(2026, 3, 8))] } };

        Assert.Equal(
            [("phone", new LocalDate(2026, 3, 8), Usd(45)), ("rent", new LocalDate(2026, 3, 14), Usd(315))],
            OpenDues.OfBills(changed, BankHolidays.None, Second).Select(due => (due.BillId.Text, due.Date, due.Amount)));
    }

    [Fact]
    public void Plan_TwoDuesOfOneBillMovedToOneDay_AreTwo()
    {
        // 14 and 15 March 2026 are a weekend: both are due on Monday the 16th.
        var bill = new Bill(new BillId("fees"), "Fees", Usd(30), new Schedule.TwiceMonthly(new MonthDay.Numbered(14), new MonthDay.Numbered(15)), Shift.After, false);
        Book book = Book.Begin(Bare with { Bills = [bill] });

        RoutinePlan plan = Plan(book, Friday6March);
        Book closed = Close(Close(book, Friday6March), Second);

        Assert.Equal([new(2026, 3, 16), new(2026, 3, 16)], plan.Bills.Dues.Select(due => due.Date));
        Assert.Equal(Usd(60), plan.Bills.Due);
        Assert.Equal(Usd(60), closed.Ledger.Balances[LedgerEnd.PaidFor(new BillId("fees"))]);
    }

    [Fact]
    public void Plan_PaydayClosedBeforeTheScheduleWasTheKey_TakesUpWhatItLeftOpenOnce()
    {
        // Old records have the day it landed on: Monday the 9th for Saturday the 7th.
        var bill = new Bill(new BillId("rent"), "Rent", Usd(300), new Schedule.EveryMonths(1, new(2026, 3, 7)), Shift.After, true);
        Book book = Close(Book.Begin(Bare with { Bills = [bill] }), Friday6March);
        ClosedPayday old = book.Closed[0] with { Dues = [new ClosedDue(new DueKey(new BillId("rent"), new(2026, 3, 9)), Usd(300), Paid: false)], Minimums = null };

        DueRow due = Assert.Single(Plan(book with { Closed = [old] }, Second).Bills.Dues);

        Assert.Equal((new LocalDate(2026, 3, 9), Usd(300)), (due.Date, due.Amount));
    }

    [Fact]
    public void Plan_PaymentOfAnOlderPaydayUndone_IsTakenUpOnceMore()
    {
        Household home = Bare with { Bills = [Bill("Rent", 300, new(2026, 3, 6))] };
        Book book = Close(Close(Book.Begin(home), Friday6March), Second);
        long payment = book.Ledger.Movements.First(movement => movement.To is LedgerEnd.Outside { Kind: OutsideKind.Bill }).Number;

        Book undone = Undoing.Of(book, payment, Second, "bounced").Value!;
        Book again = Close(undone, Third);

        Assert.Equal(new DueKey(new BillId("rent"), Friday6March), Assert.Single(OpenDues.OfBills(undone, BankHolidays.None, Second)).Key);
        Assert.DoesNotContain(OpenDues.OfBills(again, BankHolidays.None, Third.PlusDays(1)), due => due.Date < Third);
        Assert.Equal(new DueKey(new BillId("rent"), Friday6March), OpenDues.OfBills(Reopening.Of(again, Third).Value!, BankHolidays.None, Second)[0].Key);
    }

    [Fact]
    public void Plan_MinimumUndone_IsAskedForAgainWithoutASecondInterest()
    {
        Household home = Bare with { Debts = [Debt("Card", 600, 0.12m, 50, due: 10)] };
        Book book = Close(Close(Book.Begin(home), Friday6March), Second);
        Movement minimum = book.Ledger.Movements.First(movement => movement.Reason == "minimum payment");

        Book undone = Undoing.Of(book, minimum.Number, Third, "bounced").Value!;
        DebtRow row = Plan(undone, Third).Debts.Rows[0];

        Assert.Equal((new LocalDate(2026, 3, 10), Usd(0), Usd(50)), (row.Due, row.Interest, row.Payment));
    }

    // Due on the 5th; the household starts on the 3rd and is paid on the 6th. Then the payday of the 20th is left out, and the 1st falls in it.
    [Fact]
    public void Plan_MinimumBeforeTheFirstPaydayOrInOneLeftOut_IsAskedForWithItsInterest()
    {
        Household home = Bare with { Start = new(2026, 3, 3), Debts = [Debt("Card", 6000, 0.12m, 50, due: 5), Debt("Loan", 12000, 0.06m, 100, due: 1)] };
        Book book = Book.Begin(home);

        DebtRow card = Plan(book, Friday6March).Debts.Rows[0];
        DebtsStep skipped = Plan(Close(book, Friday6March), Third).Debts;

        Assert.Equal((new LocalDate(2026, 3, 5), Usd(60), Usd(50)), (card.Due, card.Interest, card.Payment));
        Assert.Equal(
            [("Card", new LocalDate(2026, 4, 5)), ("Loan", new LocalDate(2026, 4, 1))],
            skipped.Rows.Select(row => (row.Name, row.Due!.Value)));
    }

    [Fact]
    public void Plan_TwoPaysOfOneSourceOnOneDay_AreExpectedTwice()
    {
        // 31 May 2026 is a Sunday, so that pay is there on Monday 1 June, as the one of the 1st is.
        var wage = new IncomeSource(new SourceId("wage"), "Wage", new Schedule.TwiceMonthly(new MonthDay.Numbered(1), new MonthDay.Last()), Shift.After, Usd(500));
        Book book = Book.Begin(Bare with { Start = new(2026, 5, 20), Sources = [wage] });

        IncomeLine line = Assert.Single(Plan(book, new(2026, 6, 1)).Income.Lines);

        Assert.Equal((Usd(1000), Usd(1000), 2), (line.Expected, line.Amount, line.Pays));
    }

    [Fact]
    public void Plan_IncomeOfASourceThatIsNotDueThatDay_Counts()
    {
        var other = new IncomeSource(new SourceId("other"), "Other", new Schedule.Monthly(new MonthDay.Numbered(25)), Shift.None, Usd(700));
        Book book = Book.Begin(Bare with { Sources = [.. Bare.Sources, other] });

        IncomeStep income = Routine.Plan(book, new RoutineDraft(Friday6March) { Incomes = SourceSums(("other", 650)) }).Value!.Income;

        Assert.Equal(Usd(1650), income.CameIn);
        Assert.Equal([("Wage", Usd(1000)), ("Other", Usd(0))], income.Lines.Select(line => (line.Name, line.Expected)));
    }

    /// <summary>Long lives in which due days move and paydays are left out: each month has its due, once, paid or waiting.</summary>
    [Fact]
    public void OfBills_OverLongLives_EachMonthsDueIsPaidOnceOrWaits() =>
        Gen.Select(Gen.Int[1, 28].Array[1, 3], Gen.Select(Gen.Int[0, 9], Gen.Int[1, 28], Gen.Int[0, 2]).Array[24]).Sample(
            (days, life) =>
            {
                Book book = Book.Begin(Bare with { Bills = [.. days.Select((day, i) => OnDay("Bill" + (char)('a' + i), 10 + i, day))] });
                foreach ((int kind, int day, int which) in life)
                {
                    // Of ten paydays one is left out, and after two of them a due day moves.
                    LocalDate next = Routine.Next(book).Value;
                    book = Close(book, kind == 0 ? next.PlusWeeks(2) : next);
                    if (kind is 1 or 2)
                    {
                        ImmutableArray<Bill> bills = book.Household.Bills;
                        Bill moved = bills[which % bills.Length];
                        book = book with { Household = book.Household with { Bills = bills.Replace(moved, moved with { Schedule = new Schedule.Monthly(new MonthDay.Numbered(day)) }) } };
                    }
                }

                LocalDate covered = book.Closed[^1].Period.Last;
                ImmutableArray<OpenDue> open = OpenDues.OfBills(book, BankHolidays.None, covered);
                foreach (Bill bill in book.Household.Bills)
                {
                    DueKey[] dues = [.. book.Closed.SelectMany(payday => payday.Dues).Select(due => due.Key).Concat(open.Select(due => due.Key)).Where(due => due.Bill == bill.Id).Distinct()];
                    Money paid = book.Ledger.Balances[LedgerEnd.PaidFor(bill.Id)];

                    Assert.Equal(paid, bill.Amount * (dues.Length - open.Count(due => due.BillId == bill.Id)));
                    Assert.All(dues.GroupBy(due => due.Scheduled.ToYearMonth()), month => Assert.Single(month));
                    for (YearMonth month = new(2026, 4); month.PlusMonths(1).OnDayOfMonth(1) <= covered; month = month.PlusMonths(1))
                    {
                        Assert.True(
                            dues.Any(due => due.Scheduled.ToYearMonth() == month),
                            $"{month} has no due: {string.Join(", ", dues.Select(due => due.Scheduled))}; day {days[0]}, {string.Join(" ", life)}");
                    }
                }
            },
            iter: 300);

    private static Bill OnDay(string name, decimal amount, int day) =>
        Bill(name, amount, Friday6March) with { Schedule = new Schedule.Monthly(new MonthDay.Numbered(day)) };

    private static IEnumerable<LocalDate> Dates(Book book, LocalDate to) => OpenDues.OfBills(book, BankHolidays.None, to).Select(due => due.Date);

    private static LocalDate DateOf(string monthAndDay) => NodaTime.Text.LocalDatePattern.Iso.Parse("2026-" + monthAndDay).Value;

    private static RoutinePlan Plan(Book book, LocalDate payday) => Routine.Plan(book, new RoutineDraft(payday)).Value!;

    private static Book Close(Book book, LocalDate payday) =>
        Closing.Of(Plan(book, payday)) is { Ok: true } closing ? closing.Value! : throw new InvalidOperationException(Closing.Of(Plan(book, payday)).Faults.Said());
}
