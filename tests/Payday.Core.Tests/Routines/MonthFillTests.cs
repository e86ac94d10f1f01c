using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>A month's amount over the paydays that were really closed.</summary>
public class MonthFillTests
{
    private static readonly LocalDate May1 = new(2026, 5, 1);

    private static readonly Pot Goods = AccountPot("Goods", 0) with { Kind = new PotKind.Spending(Usd(90), FillPer.Month) };

    // Fortnightly from 6 March: May has 1, 15 and 29, of which the last is extra.
    private static readonly Book May = Book.Begin(Bare with { Start = May1, Pots = [Goods] });

    [Fact]
    public void Plan_ShortPayday_IsMadeUpForOnTheExtraOne()
    {
        Book shortOne = Close(Close(May, 1), 15, income: 20);

        Assert.Equal([45m, 20m], FillsOf(shortOne));
        Assert.Equal((Usd(25), "extra: 25 was missed"), Proposed(shortOne, 29));
    }

    [Fact]
    public void Plan_ShortPayday_IsMadeUpForOnTheNextUsualOne() =>
        Assert.Equal((Usd(70), "70 of 90 to go"), Proposed(Close(May, 1, income: 20), 15));

    [Fact]
    public void Plan_NothingMissed_ExtraPaydayGetsNothing() =>
        Assert.Equal((Usd(0), "extra payday: already full"), Proposed(Close(Close(May, 1), 15), 29));

    [Fact]
    public void Plan_NextMonth_BeginsAnew()
    {
        Book book = Close(Close(Close(May, 1, income: 0), 15, income: 0), 29, income: 0);

        Assert.Equal((Usd(45), "90 a month, part 1 of 2"), Proposed(book, new LocalDate(2026, 6, 12)));
    }

    [Fact]
    public void Plan_PaydayLeftOut_IsMadeUpForLater() => Assert.Equal((Usd(90), "90 of 90 to go"), Proposed(May, 15));

    [Fact]
    public void Plan_StartAmidTheMonth_OwesTheSharesLeft() =>
        Assert.Equal((Usd(45), "90 a month, part 2 of 2"), Proposed(Book.Begin(May.Household with { Start = May1.PlusDays(1) }), 15));

    [Fact]
    public void Plan_SurplusPlacedInThePot_IsNoFill()
    {
        Book placed = Close(May, new RoutineDraft(May1)
        {
            Placements = [new Placement(MoveTarget.Pot(new PotId("goods")), Usd(30)), new Placement(MoveTarget.Buffer, Usd(925))],
        });

        Assert.Equal((Usd(45), "90 a month, part 2 of 2"), Proposed(placed, 15));
    }

    [Fact]
    public void Plan_NoFillButSurplusPlaced_StillLacksTheWholeMonth()
    {
        Book placed = Close(May, new RoutineDraft(May1)
        {
            Fills = PotSums(("goods", 0)),
            Placements = [new Placement(MoveTarget.Pot(new PotId("goods")), Usd(30)), new Placement(MoveTarget.Buffer, Usd(970))],
        });

        Assert.Equal((Usd(90), "90 of 90 to go"), Proposed(placed, 15));
    }

    [Fact]
    public void Plan_ReopenedPayday_LeavesNoTrace()
    {
        Book closed = Close(May, 1);
        Book reopened = Reopening.Of(closed, new LocalDate(2026, 5, 9)).Value!;

        Assert.Equal(Proposed(May, 1), Proposed(reopened, 1));
        Assert.Equal((Usd(70), "70 of 90 to go"), Proposed(Close(reopened, 1, income: 20), 15));
    }

    [Fact]
    public void Plan_FillUndoneAlone_IsLackingAgain()
    {
        Book closed = Close(May, 1);
        long fill = closed.Ledger.Movements.Single(movement => movement.Reason == "fill").Number;

        Assert.Equal((Usd(90), "90 of 90 to go"), Proposed(Undoing.Of(closed, fill, new LocalDate(2026, 5, 4), "a slip").Value!, 15));
    }

    [Fact]
    public void Plan_SpendingAndCashThatWasCounted_ChangeNothingOfTheMonth()
    {
        Pot cash = Goods with { Place = Place.Cash };
        Book closed = Close(Book.Begin(May.Household with { Pots = [cash] }), 1);
        Book counted = WeekHomes.Count(closed, new LocalDate(2026, 5, 8), "goods", 5);

        Assert.Equal((Usd(45), "90 a month, part 2 of 2"), Proposed(counted, 15));
    }

    // The wage for 1 November, a Sunday, is there on Friday 30 October, when October's last one is too.
    [Fact]
    public void Plan_PaydayOfTwoMonths_GivesTheEarlierItsShareFirst()
    {
        Household home = May.Household with
        {
            Start = new(2026, 10, 1),
            Sources =
            [
                Wage("first", new MonthDay.Numbered(1)),
                Wage("end", new MonthDay.Last()),
            ],
        };
        Book october = Close(Book.Begin(home), new LocalDate(2026, 10, 1), income: 20);
        Book both = Close(october, new LocalDate(2026, 10, 30));

        // 70 that October still lacks, and half of November.
        Assert.Equal([20m, 115m], FillsOf(both));
        Assert.Equal((Usd(45), "90 a month, part 2 of 2"), Proposed(both, new LocalDate(2026, 11, 30)));

        static IncomeSource Wage(string id, MonthDay day) => new(new SourceId(id), id, new Schedule.Monthly(day), Shift.Before, Usd(1000));
    }

    // Shares by another way: what lacks, in units, over the paydays left, each rounded up; what is missed goes on.
    [Fact]
    public void Plan_MonthsWithRandomShortfalls_FillNeverMoreAndLoseNothing() => Gen.Select(
        Gen.Int[1, 4], Gen.Int[0, 27], Gen.Int[1, 200], Gen.Bool, Gen.Bool, Gen.Int[0, 4].Array[20]).Sample((weeks, start, dollars, inCash, spread, cuts) =>
    {
        var began = new LocalDate(2026, 3, 1).PlusDays(start);
        Pot pot = Goods with { Place = inCash ? Place.Cash : Place.Account, Kind = new PotKind.Spending(Usd(dollars), spread ? FillPer.MonthSpread : FillPer.Month) };
        Book book = Book.Begin(Bare with
        {
            Start = began,
            Pots = [pot],
            Sources = [Bare.Sources[0] with { Schedule = new Schedule.EveryWeeks(weeks, Friday6March) }],
        });
        decimal unit = inCash ? 5 : 0.01m;
        int usualCount = Math.Max(1, 4 / weeks);
        DateTime[] paydays = [.. Enumerable.Range(-10, 40).Select(i => new DateTime(2026, 3, 6).AddDays(7 * weeks * i)).Where(day => day >= new DateTime(2026, 3, 1) && day < new DateTime(2026, 6, 1))];
        foreach (IGrouping<int, DateTime> month in paydays.GroupBy(day => day.Month))
        {
            DateTime[] all = [.. month];
            DateTime[] sharing = spread ? all : all[..Math.Min(usualCount, all.Length)];
            decimal[] planned = new decimal[sharing.Length];
            for (int i = 0; i < planned.Length; i++)
            {
                planned[i] = Share(dollars - planned.Sum(), planned.Length - i);
            }

            decimal owed = sharing.Select((day, i) => day >= began.ToDateTimeUnspecified() ? planned[i] : 0).Sum();
            decimal soFar = 0;
            foreach (DateTime day in all.Where(day => day >= began.ToDateTimeUnspecified()))
            {
                int at = Array.IndexOf(sharing, day);
                decimal expected = at >= 0
                    ? Share(owed - soFar, sharing.Length - at)
                    : owed - soFar;
                LocalDate date = LocalDate.FromDateTime(day);
                Assert.Equal(Usd(expected), Proposed(book, date).Fill);
                decimal fill = Math.Floor(expected * (4 - cuts[day.DayOfYear % cuts.Length]) / 4);
                book = Close(book, new RoutineDraft(date) { Fills = PotSums(("goods", fill)) });
                soFar += fill;
                Assert.True(soFar <= owed);
            }

            // A last payday that carries what it is asked for makes the month whole.
            if (cuts[all[^1].DayOfYear % cuts.Length] == 0 && all[^1] >= began.ToDateTimeUnspecified() && decimal.Truncate(owed) == owed)
            {
                Assert.Equal(owed, soFar);
            }
        }

        decimal Share(decimal lacking, int left) => left == 1 ? lacking : Math.Ceiling(Math.Floor(lacking / unit) / left) * unit;
    }, iter: 60);

    private static Book Close(Book book, int mayDay, decimal income = 1000) => Close(book, new LocalDate(2026, 5, mayDay), income);

    // What came is of one source or of all, so one that pays less than usual is a short payday.
    private static Book Close(Book book, LocalDate payday, decimal income = 1000) => Close(book, new RoutineDraft(payday)
    {
        // Of those that pay that day; the pay of another would count on top.
        Incomes = book.Household.Sources.Where(source => PayCalendar.Paydays([source], BankHolidays.None, payday, payday).Length > 0).ToImmutableSortedDictionary(source => source.Id, _ => Usd(income)),
    });

    private static Book Close(Book book, RoutineDraft draft)
    {
        Result<Book> closing = Closing.Of(Routine.Plan(book, draft).Value!);
        Assert.True(closing.Ok, closing.Faults.Said());
        return closing.Value;
    }

    private static (Money Fill, string Why) Proposed(Book book, int mayDay) => Proposed(book, new LocalDate(2026, 5, mayDay));

    private static (Money Fill, string Why) Proposed(Book book, LocalDate payday)
    {
        PotRow row = Routine.Plan(book, new RoutineDraft(payday)).Value!.Pots.Rows.Single();
        return (row.Wanted, row.Why);
    }

    private static decimal[] FillsOf(Book book) =>
        [.. book.Ledger.Movements.Where(movement => movement.Reason == "fill").Select(movement => movement.Amount.MinorUnits / 100m)];
}
