using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using static Payday.Core.Tests.Bills.Plans;

namespace Payday.Core.Tests.Bills;

public class BillDuesTests
{
    private static readonly LocalDate Start = new(2026, 8, 1);
    private static readonly LocalDate End = new(2026, 8, 31);

    [Fact]
    public void Between_SeveralBills_AreInOrderOfDateThenBill()
    {
        ImmutableArray<Due> dues = BillDues.Between(
            [Bill("water", 15, 30), Bill("rent", 3, 900), Bill("power", 15, 0)], BankHolidays.None, Start, End);

        Assert.Equal(
            [
                new Due(new BillId("rent"), "rent", new LocalDate(2026, 8, 3), Cents(900)),
                new Due(new BillId("water"), "water", new LocalDate(2026, 8, 14), Cents(30)) { Scheduled = new LocalDate(2026, 8, 15) },
                new Due(new BillId("power"), "power", new LocalDate(2026, 8, 14), Cents(0)) { Scheduled = new LocalDate(2026, 8, 15) },
            ],
            dues.ToArray());
    }

    [Fact]
    public void Between_TwoDuesMovedToOneDay_StayTwo()
    {
        var twice = new Schedule.TwiceMonthly(new MonthDay.Numbered(15), new MonthDay.Numbered(16));
        Bill bill = Bill("loan", 1, 50) with { Schedule = twice };

        Assert.Equal(
            [new LocalDate(2026, 8, 14), new LocalDate(2026, 8, 14)],
            BillDues.Between([bill], BankHolidays.None, Start, End).Select(due => due.Date));
    }

    [Fact]
    public void Between_BillThatHasEnded_IsNotDue() =>
        Assert.Empty(BillDues.Between([Bill("loan", 3, 50) with { Until = new LocalDate(2026, 8, 2) }], BankHolidays.None, Start, End));

    // 15 August 2026 is a Saturday.
    private static Bill Bill(string name, int day, long amount) =>
        new(new BillId(name), name, Cents(amount), new Schedule.Monthly(new MonthDay.Numbered(day)), Shift.Before, Essential: true);
}
