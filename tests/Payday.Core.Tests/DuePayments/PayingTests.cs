using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.ClosedPaydays;
using Payday.Core.Debts;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.DuePayments;

/// <summary>Rule: the project's design, section 5.9.</summary>
public class PayingTests
{
    private static readonly LocalDate Second = new(2026, 3, 20);
    private static readonly LocalDate Third = new(2026, 4, 3);
    private static readonly DueKey Rent = new(new BillId("rent"), new(2026, 3, 15));
    private static readonly DueKey Card = new(new DebtId("card"), new(2026, 3, 15));

    // 150 is set aside for the rent of 15 March, 25 wait for the card's minimum of that day, and 200 stay in the buffer.
    private static readonly Household Home = Bare with
    {
        Bills = [Bill("Rent", 150, new(2026, 3, 15))],
        Debts = [Debt("Card", 6400, 0.12m, 25, due: 15)],
        Opening = Bare.Opening with { Account = Usd(200) },
        Settings = Bare.Settings with { SetAsides = SetAsideMode.AsTheyFall },
    };

    private static Book Closed { get; } = Close(Book.Begin(Home), Friday6March);

    [Fact]
    public void Closing_WhatIsNotTicked_WaitsInTheAccountAndChargesNoInterestYet()
    {
        Assert.Equal((Usd(25), Usd(150), Usd(0)), (Closed.Has("account/for-debt:card"), Closed.Has("account/set-aside:rent"), Closed.Has("outside/interest:card")));
        Book ticked = Closing.Of(Routine.Plan(Book.Begin(Home), new RoutineDraft(Friday6March) { PaidMinimums = new RoutineDraft(Friday6March).PaidMinimums.Add(Card, true) }).Value!).Value!;
        Assert.Equal((Usd(0), Usd(0)), (ticked.Has("account/for-debt:card"), ticked.Has("outside/interest:card")));
        Assert.Equal(Closed.Has("owed/card") + Usd(25), ticked.Has("owed/card"));
    }

    [Fact]
    public void NextRoutine_PastAndUnticked_OffersThemAsPaidOnTheirDay()
    {
        RoutinePlan plan = Routine.Plan(Closed, new RoutineDraft(Second)).Value!;
        Book next = Close(Closed, Second);

        Assert.Equal([(new LocalDate(2026, 3, 15), true)], plan.Bills.Dues.Select(due => (due.Date, due.Paid)));
        DebtRow row = Assert.Single(plan.Debts.Rows);
        Assert.Equal((true, new LocalDate(2026, 3, 15), Usd(25)), (row.Paid, row.PaidOn, row.Payment));
        Assert.Equal(Usd(0), plan.Debts.Total);
        Assert.All(next.Ledger.Standing.Where(movement => movement.To == LedgerEnd.InterestOn(new DebtId("card")) || movement.Reason == "minimum payment"), movement => Assert.Equal(new(2026, 3, 15), movement.Date));
    }

    [Theory]
    [InlineData(7)]
    [InlineData(15)]
    [InlineData(19)]
    public void Enter_AMinimumEarlyOrLate_ChangesNothingOfTheInterest(int day)
    {
        Money surplus = Money.Sum(Closed.Ledger.Of(new LedgerEnd.Owed(new DebtId("card"))).Where(movement => movement.Reason == "surplus").Select(movement => movement.Amount), Dollars);
        Book paid = Pay(Closed, new DueEntry(Card, new(2026, 3, day)));

        Assert.Equal(-(Usd(6400) - surplus - Usd(25)) - (day >= 15 ? Interest(Usd(6400) - surplus) : Usd(0)), paid.Has("owed/card"));
        Assert.Equal(Interest(Usd(6400) - surplus), Close(paid, Second).Has("outside/interest:card"));
        Assert.Equal(Usd(0), paid.Has("account/for-debt:card"));
    }

    // Ticked in March, the minimum of April is covered; its month's interest still comes on 15 April, on what is owed then.
    [Fact]
    public void Outlook_OfAMinimumPaidBeyondThePeriod_HasItsMonthsInterest()
    {
        Book april = Pay(Pay(Closed, new DueEntry(Card, new(2026, 3, 15))), new DueEntry(new DueKey(new DebtId("card"), new(2026, 4, 15)), new(2026, 3, 17)));
        Money owed = -april.Has("owed/card");

        DebtOutlook outlook = DebtOutlook.Of(april, new(2026, 3, 18));
        Assert.Equal((new YearMonth(2026, 5), owed + Interest(owed + Usd(25))), (outlook.From, outlook.Debts[0].Balance));
        Assert.Equal(outlook.Debts[0].Balance, DebtOutlook.Of(Paying.Undo(april, 2, new(2026, 3, 18)).Value!, new(2026, 3, 18)) is var before && before.From == new YearMonth(2026, 4)
            ? before.Debts[0].Balance + Interest(before.Debts[0].Balance) - Usd(25) : owed);
    }

    // April is ticked while March is open: what is asked for goes on in May, and April's interest is on what was owed before it was ticked.
    [Fact]
    public void Outlook_OfALaterMinimumPaidWhileAnEarlierIsOpen_AsksForItNoMore()
    {
        Book begun = Book.Begin(Home with { Debts = [Debt("Card", 300, 0.12m, 100, due: 15)] });
        Book april = Pay(begun, new DueEntry(new DueKey(new DebtId("card"), new(2026, 4, 15)), Friday6March));

        DebtOutlook outlook = DebtOutlook.Of(april, Friday6March);
        DebtProjection course = DebtProjection.Project(outlook.From, outlook.Debts, Usd(0), Usd(0), DebtOrder.SmallestBalance);

        // 200 + 2.00 - 100; in April nothing, 2.02 on 202; in May 104.02 + 1.04 less 100; the rest in June.
        Assert.Equal((new YearMonth(2026, 3), Usd(200), new PaidAhead(new(2026, 4, 15), Usd(100))), (outlook.From, outlook.Debts[0].Balance, Assert.Single(outlook.Debts[0].PaidAhead)));
        Assert.Equal([Usd(200), Usd(102), Usd(104.02m), Usd(5.06m), Usd(0)], course.Owed);
        Assert.Empty(DebtOutlook.Of(Paying.Undo(april, 1, Friday6March).Value!, Friday6March).Debts[0].PaidAhead);
    }

    // 100 beyond the minimum on the 10th is not owed on the 15th any more; on the 16th it comes too late.
    [Theory]
    [InlineData(10, 100)]
    [InlineData(16, 0)]
    public void Enter_MoreThanTheMinimumBeforeItsDay_LowersTheInterest(int day, int less)
    {
        Money before = -Closed.Has("owed/card");
        Book paid = Close(Pay(Closed, new DueEntry(Card, new(2026, 3, day), Usd(125))), Second);
        Assert.Equal(Interest(before - Usd(less)), paid.Has("outside/interest:card"));
    }

    [Fact]
    public void Enter_ABillsPart_LeavesTheRestDueWithItsMoney()
    {
        Book part = Pay(Closed, new DueEntry(Rent, new(2026, 3, 14), Usd(100)));
        DueLine rest = Lines(part)[0];
        Book whole = Pay(part, new DueEntry(Rent, new(2026, 3, 16)));

        Assert.Equal((Rent, Usd(50), Usd(100), Usd(50)), (rest.Key, rest.Rest, rest.Paid, rest.Has));
        Assert.Equal(Usd(50), Assert.Single(Routine.Plan(part, new RoutineDraft(Second)).Value!.Bills.Dues).Amount);
        Assert.Equal(Usd(150), Close(part, Second).Has("outside/bill:rent"));
        Assert.Empty(Routine.Plan(whole, new RoutineDraft(Second)).Value!.Bills.Dues);
        Assert.Equal(Usd(150), whole.Has("outside/bill:rent"));
    }

    // A rest that a payday took up with another amount is that amount, less what is paid since.
    [Fact]
    public void Enter_APartOfWhatARoutineDecided_TakesItOffOnce()
    {
        Book part = Pay(Closed, new DueEntry(Rent, new(2026, 3, 14), Usd(100)));
        var draft = new RoutineDraft(Second);
        draft = draft with { Dues = draft.Dues.Add(Rent, new DueDecision(Usd(60), Paid: false)) };
        Book left = Closing.Of(Routine.Plan(part, draft).Value!).Value!;

        Assert.Equal(Usd(60), Lines(left)[0].Rest);
        Assert.Equal(Usd(20), Lines(Pay(left, new DueEntry(Rent, new(2026, 3, 21), Usd(40))))[0].Rest);
    }

    [Fact]
    public void Enter_MoreThanIsHeld_TakesTheBillsLaterMoneyThenTheBuffer()
    {
        Book paid = Pay(Closed, new DueEntry(Rent, new(2026, 3, 14), Usd(156)));
        Assert.Equal((Usd(0), Usd(194), Usd(156)), (paid.Has("account/set-aside:rent"), paid.Has("account/buffer"), paid.Has("outside/bill:rent")));
        Assert.DoesNotContain(Lines(paid), line => line.Key == Rent);
        Assert.Equal(new DueFault.NotEnough("Rent", Usd(350.01m), Usd(150), Usd(200)), Paying.Enter(Closed, new DueEntry(Rent, Friday13March, Usd(350.01m)), Friday13March).Fault);
    }

    [Fact]
    public void Enter_ARestThatIsFreed_IsLeftToPlace()
    {
        Book free = Pay(Closed, new DueEntry(Rent, new(2026, 3, 14), Usd(100), FreesRest: true));
        Book waived = Pay(Closed, new DueEntry(Card, new(2026, 3, 14), Usd(0), FreesRest: true));

        Assert.Equal((Usd(50), Usd(0)), (free.Has("account/left-to-place"), free.Has("account/set-aside:rent")));
        Assert.Equal((Usd(25), Usd(0)), (waived.Has("account/left-to-place"), waived.Has("account/for-debt:card")));
        Assert.Equal(Usd(1025), Routine.Plan(waived, new RoutineDraft(Second)).Value!.Income.ToPlace);
        Assert.Equal(Usd(0), Close(waived, Second).Has("account/left-to-place"));
    }

    [Fact]
    public void Enter_WhatCantBe_IsRefused()
    {
        Assert.Equal(new DueFault.StillToCome(Second), Fault(new DueEntry(Rent, Second)));
        Assert.Equal(new DueFault.BeforeStart(new(2026, 3, 5), Friday6March), Fault(new DueEntry(Rent, new(2026, 3, 5))));
        Assert.Equal(new DueFault.NotAboveZero(), Fault(new DueEntry(Rent, Friday13March, Usd(0))));
        Assert.Equal(new DueFault.NotAboveZero(), Fault(new DueEntry(Rent, Friday13March, Usd(-1), FreesRest: true)));
        Assert.Equal(new DueFault.NotOpen("Rent", new(2026, 3, 16)), Fault(new DueEntry(new DueKey(new BillId("rent"), new(2026, 3, 16)), Friday13March)));
        Assert.Equal(new DueFault.MoreThanOwed("Card", -Closed.Has("owed/card")), Fault(new DueEntry(Card, Friday13March, Usd(7000))));
        Assert.Equal(
            new DueFault.NotOpen("Rent", Rent.Scheduled),
            Paying.Enter(Pay(Closed, new DueEntry(Rent, Friday13March)), new DueEntry(Rent, Friday13March), Friday13March).Fault);

        static Fault Fault(DueEntry entry) => Paying.Enter(Closed, entry, Friday13March).Fault!;
    }

    [Fact]
    public void Undo_WhatAPaydayHasSeen_LeadsToIt()
    {
        Book freed = Close(Pay(Closed, new DueEntry(Rent, Friday13March, Usd(0), FreesRest: true)), Second);
        Book extra = Close(Pay(Closed, new DueEntry(Card, Friday13March, Usd(125))), Second);
        Book exact = Close(Pay(Closed, new DueEntry(Card, Friday13March)), Second);
        Book parts = Pay(Pay(Closed, new DueEntry(Rent, Friday13March, Usd(50))), new DueEntry(Rent, Friday13March));

        Assert.Equal(new BookEntry.Payday(Second), Paying.InTheWay(freed, 1)!.First);
        Assert.Equal(new BookEntry.Payday(Second), Paying.InTheWay(extra, 1)!.First);
        Assert.Null(Paying.InTheWay(exact, 1));
        Assert.Equal(new BookEntry.Payment(2, "Rent", Rent.Scheduled), Paying.InTheWay(parts, 1)!.First);
        Assert.Equal(new Obstacle.NoSuchPayment(3), Paying.InTheWay(parts, 3));
        Assert.Equal(new Obstacle.PaymentUndone(2), Paying.InTheWay(Paying.Undo(parts, 2, Second).Value!, 2));
        Assert.Equal(new BookEntry.Payment(2, "Rent", Rent.Scheduled), Reopening.InTheWay(parts)!.First);
        Assert.NotNull(Reopening.InTheWay(Pay(Closed with { Household = Home with { Bills = [] } }, new DueEntry(Card, Friday13March, Usd(0), FreesRest: true))));
    }

    // Undone when paydays have gone by that left it out, as it was paid, it is due again.
    [Fact]
    public void Undo_AfterLaterPaydays_LeavesTheDueOpen()
    {
        Book later = Close(Close(Close(Pay(Closed, new DueEntry(Rent, Friday13March)), Second), Third), new(2026, 4, 17));
        Book undone = Paying.Undo(later, 1, new(2026, 4, 18)).Value!;

        Assert.DoesNotContain(Lines(later, new(2026, 4, 18)), line => line.Key == Rent);
        Assert.Equal((Rent, Usd(150), Usd(150)), Lines(undone, new(2026, 4, 18)).Select(line => (line.Key, line.Rest, line.Has)).First());
    }

    // A due that was paid on the 10th is not due again on the 12th.
    [Fact]
    public void Enter_ThenItsDayMoves_IsStillPaid()
    {
        Book paid = Pay(Closed, new DueEntry(Rent, new(2026, 3, 10)));
        Book moved = paid with { Household = Home with { Bills = [Bill("Rent", 150, new(2026, 3, 17))] } };
        Assert.Equal(new(2026, 4, 17), Lines(moved).First(line => line.Key.Bill is not null).Date);
    }

    // What earlier versions closed had charged the interest with the minimum that was still to come.
    [Fact]
    public void Plan_APaydayClosedByAnEarlierVersion_IsNotChargedAgain()
    {
        ClosedPayday old = Closed.Closed[0] with { Minimums = [new ClosedDue(Card, Usd(25), Paid: true)], Charged = null };
        Book book = Closed with { Closed = [old] };
        DebtRow row = Assert.Single(Routine.Plan(book, new RoutineDraft(Second)).Value!.Debts.Rows);
        Assert.Equal((null, Usd(0)), (row.Due, row.Interest));
        Assert.Equal(new LocalDate(2026, 4, 15), Assert.Single(Routine.Plan(book, new RoutineDraft(Third)).Value!.Debts.Rows).Due);
    }

    // Weekly on Tuesdays, the first of March before the household began, that of April on the 7th; then quarterly, the months between charged on their last day.
    [Fact]
    public void Closing_AnotherScheduleThanMonthly_ChargesEachMonthOnce()
    {
        Book weekly = Close(Close(Close(Close(Book.Begin(Paid(new Schedule.EveryWeeks(1, new(2026, 3, 10)))), Friday6March), Second), Third), new(2026, 4, 17));
        Assert.Equal([new LocalDate(2026, 4, 7)], Charges(weekly));
        Assert.Equal([new(2026, 3, 10), new(2026, 3, 17), new(2026, 3, 24), new(2026, 3, 31), new(2026, 4, 7), new LocalDate(2026, 4, 14)], weekly.Ledger.Standing.Where(movement => movement.Reason == "minimum payment").Select(movement => movement.Date));

        Book quarterly = Book.Begin(Paid(new Schedule.EveryMonths(3, new(2026, 3, 15))));
        for (LocalDate payday = Friday6March; payday < new LocalDate(2026, 7, 1); payday = payday.PlusWeeks(2))
        {
            quarterly = Close(quarterly, payday);
        }

        Assert.Equal([new(2026, 3, 15), new(2026, 4, 30), new(2026, 5, 31), new(2026, 6, 15)], Charges(quarterly));

        static Household Paid(Schedule schedule) => Home with { Bills = [], Debts = [Debt("Card", 90_000, 0.12m, 25, due: 1) with { Schedule = schedule }] };
        static IEnumerable<LocalDate> Charges(Book book) => book.Ledger.Of(LedgerEnd.InterestOn(new DebtId("card"))).Select(movement => movement.Date);
    }

    /// <summary>Whatever is paid when: each month's interest is a twelfth of the rate on what an account kept by hand says, once a month.</summary>
    [Fact]
    public void Interest_OverRandomLives_IsWhatAnAccountKeptByHandSays() =>
        Gen.Select(Gen.Int[1, 28], Gen.Select(Gen.Int[0, 160], Gen.Int[0, 400], Gen.Bool).Array[0, 12]).Sample(
            (due, payments) =>
            {
                Book book = Book.Begin(Home with { Debts = [Debt("Card", 6400, 0.12m, 25, due)], Opening = Bare.Opening with { Account = Usd(90_000) } });
                LocalDate payday = Friday6March;
                for (LocalDate today = Friday6March; today < Friday6March.PlusDays(170); today = today.PlusDays(1))
                {
                    if (today == payday)
                    {
                        book = Close(book, payday);
                        payday = payday.PlusWeeks(2);
                    }

                    foreach ((_, int amount, bool later) in payments.Where(payment => payment.Item1 == Period.DaysBetween(Friday6March, today)))
                    {
                        DueLine[] lines = [.. Lines(book, today.PlusMonths(2)).Where(line => line.Key.Debt is not null)];
                        if (lines.ElementAtOrDefault(later ? 1 : 0) is { } line && Paying.Enter(book, new DueEntry(line.Key, today, Usd(amount)), today) is { Ok: true } paid)
                        {
                            book = paid.Value;
                        }
                    }
                }

                AssertInterest(book, due);
            },
            iter: 60);

    private static void AssertInterest(Book book, int due)
    {
        Movement[] charges = [.. book.Ledger.Of(LedgerEnd.InterestOn(new DebtId("card")))];
        Assert.Equal(charges.Length, charges.Select(charge => charge.Date.ToYearMonth()).Distinct().Count());
        foreach (Movement charge in charges)
        {
            Assert.Equal(Math.Min(due, 28), charge.Date.Day);
            Money owed = Usd(0);
            foreach (Movement movement in book.Ledger.Of(new LedgerEnd.Owed(new DebtId("card"))).Where(movement => movement.Number < charge.Number || movement.Date < charge.Date))
            {
                bool before = movement.Date < charge.Date || movement.To is LedgerEnd.Outside { Kind: OutsideKind.Opening };
                Money early = Usd(0);
                if (before && book.Weeks.StandingPayments.FirstOrDefault(one => one.FirstMovement <= movement.Number && movement.Number <= one.LastMovement) is { } payment
                    && payment.Key.Scheduled >= charge.Date && movement.From is LedgerEnd.At)
                {
                    // Of what left early so much as was asked; it may have come from two ends.
                    Money all = Money.Min(payment.Amount, payment.Asked!.Value);
                    early = movement.Number == payment.LastMovement
                        ? (all - (payment.Amount - movement.Amount)).ClampToZero()
                        : Money.Min(all, movement.Amount);
                }

                owed += !before ? Usd(0) : movement.From is LedgerEnd.Owed ? movement.Amount : early - movement.Amount;
            }

            Assert.Equal(Interest(owed), charge.Amount);
        }
    }

    private static Money Interest(Money owed) => owed.ClampToZero().MonthOfInterest(0.12m);

    private static DueLine[] Lines(Book book, LocalDate? today = null) => [.. DueLines.Of(book, (today ?? Second).PlusMonths(1))];

    private static Book Pay(Book book, DueEntry entry)
    {
        Result<Book> paid = Paying.Enter(book, entry, entry.Date);
        Assert.True(paid.Ok, paid.Fault.Said());
        return paid.Value;
    }
}
