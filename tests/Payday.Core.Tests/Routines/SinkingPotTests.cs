using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>Sinking pots over paydays that were really closed, with money really spent.</summary>
public class SinkingPotTests
{
    // Paydays 6 and 20 March, 3, 17 April, 1 May and so on: 120 by 4 April is 40 each on the first three.
    private static readonly Pot Boots = AccountPot("Boots", 0) with { Kind = new PotKind.Sinking(Usd(120), new(2026, 4, 4)) };

    private static readonly Book Full = Close(Close(Close(Book.Begin(Bare with { Pots = [Boots] }), March(6)), March(20)), April(3));

    [Fact]
    public void Plan_SpentAfterItsDate_IsNotFilledAgain()
    {
        Assert.Equal((Usd(0), "full since 4 Apr, waits"), Proposed(Full, April(17)));
        Book bought = Full.Buy(110, April(10));

        PotRow row = Row(bought, April(17));
        Assert.Equal((Usd(0), "110 spent: bought?", true), (row.Wanted, row.Why, row.Asks));
        Assert.Equal((Usd(0), "110 spent: bought?"), Proposed(Close(bought, April(17)), new(2026, 5, 1)));
    }

    [Fact]
    public void Plan_SpentBeforeItsDate_CountsAsBought() => Assert.Equal(
        (Usd(0), "70 spent: bought?"),
        Proposed(Close(Close(Book.Begin(Full.Household), March(6)), March(20)).Buy(70, new(2026, 3, 25)), April(3)));

    [Fact]
    public void Plan_DatePastAndNotFull_ProposesNothingAndAsks()
    {
        // 40, 40, and nothing on the third.
        Book some = Close(Close(Close(Book.Begin(Full.Household), March(6)), March(20)), April(3), fill: 0);

        PotRow row = Row(some, April(17));
        Assert.Equal((Usd(80), Usd(0), "40 short since 4 Apr", true), (row.HasNow, row.Wanted, row.Why, row.Asks));
    }

    [Fact]
    public void Plan_PurchaseUndone_LeavesNoTrace()
    {
        Book undone = Purchasing.Undo(Full.Buy(110, April(10)), 1, April(12)).Value!;

        Assert.Equal(Proposed(Full, April(17)), Proposed(undone, April(17)));
    }

    [Fact]
    public void Finish_Bought_AsksNoMore()
    {
        Book bought = Answered(Full.Buy(110, April(10)), book => SinkingAnswers.Finish(book, new PotId("boots")));

        PotRow row = Row(bought, April(17));
        Assert.Equal((Usd(0), "finished", false), (row.Wanted, row.Why, row.Asks));
    }

    [Fact]
    public void Repeat_TenLeftOver_NeedsTheRestByTheNextDate()
    {
        Book bought = Answered(Full.Buy(110, April(10)), book => SinkingAnswers.Repeat(book, new PotId("boots")));

        // 110 over 26 paydays from 17 April to 2 April 2027: 11,000 cents are 423 each, and two spare.
        Assert.Equal((Usd(4.24m), "110 short, 26 paydays"), Proposed(bought, April(17)));
    }

    [Fact]
    public void Repeat_QuarterlyAndUnspent_Waits()
    {
        Book waits = Answered(Full, book => SinkingAnswers.Repeat(book, new PotId("boots"), new Schedule.EveryMonths(3, new(2026, 4, 4))));
        for (LocalDate payday = April(17); payday < new LocalDate(2026, 8, 1); payday = payday.PlusWeeks(2))
        {
            Assert.Equal((Usd(0), "full since 4 Apr, waits"), Proposed(waits, payday));
            waits = Close(waits, payday);
        }
    }

    [Fact]
    public void Repeat_PlayedForAYear_IsFullByEachDateAndNeverBefore()
    {
        Book book = Answered(Full, book => SinkingAnswers.Repeat(book, new PotId("boots"), new Schedule.EveryMonths(3, new(2026, 4, 4))));
        LocalDate due = new(2026, 4, 4);
        for (LocalDate payday = April(17); payday < new LocalDate(2027, 4, 20); payday = payday.PlusWeeks(2))
        {
            if (payday > due)
            {
                Assert.Equal(Usd(120), Row(book, payday).HasNow);
                book = book.Buy(110, due.PlusDays(1));
                due = due.PlusMonths(3);
            }

            book = Close(book, payday);
        }
    }

    [Fact]
    public void GoOn_SpentBeforeItsDate_SavesForTheRest()
    {
        Book some = Close(Close(Book.Begin(Full.Household), March(6)), March(20)).Buy(30, new(2026, 3, 25));
        Book goesOn = Answered(some, book => SinkingAnswers.GoOn(book, new PotId("boots")));

        Assert.Equal((Usd(70), "70 short by 4 Apr"), Proposed(goesOn, April(3)));
        Assert.True(Row(goesOn.Buy(5, new(2026, 3, 26)), April(3)).Asks);
    }

    [Fact]
    public void By_LaterDate_SavesForIt()
    {
        Book bought = Full.Buy(110, April(10));

        Assert.Equal(
            (Usd(55), "110 short, 2 paydays"),
            Proposed(Answered(bought, book => SinkingAnswers.By(book, new PotId("boots"), new(2026, 5, 2), April(17))), April(17)));
    }

    [Fact]
    public void Of_DateChangedInTheFile_SavesForItToo()
    {
        Book bought = Full.Buy(110, April(10));
        Household later = bought.Household with { Pots = [Boots with { Kind = new PotKind.Sinking(Usd(120), new(2026, 5, 2)) }] };

        Assert.Equal((Usd(55), "110 short, 2 paydays"), Proposed(HouseholdChange.Of(bought, later).Value!, April(17)));
    }

    [Fact]
    public void By_ThePaydayItself_PutsAllOfItIn() => Assert.Equal(
        (Usd(110), "110 short by 17 Apr"),
        Proposed(Answered(Full.Buy(110, April(10)), book => SinkingAnswers.By(book, new PotId("boots"), April(17), April(17))), April(17)));

    [Theory]
    [InlineData("2026-04-16", "No payday comes by 16 Apr 2026 any more; name 17 Apr 2026, the next one, or a later day.")]
    [InlineData("2126-03-07", "7 Mar 2126 is more than 100 years off; look for a mistyped year.")]
    public void By_DateThatCannotBe_IsRefused(string date, string fault) =>
        Assert.Equal(fault, SinkingAnswers.By(Full, new PotId("boots"), NodaTime.Text.LocalDatePattern.Iso.Parse(date).Value, April(17)).Fault.Said());

    [Fact]
    public void Finish_PotWithoutADate_IsRefused() => Assert.Equal(
        "Food has no target by a date, so there is nothing to say of it.",
        SinkingAnswers.Finish(Book.Begin(Bare with { Pots = [CashPot("Food", 5)] }), new PotId("food")).Fault.Said());

    [Fact]
    public void Of_PotThatAsks_HasNoCourse() => Assert.Empty(PotCourse.Of(Plan(Full.Buy(110, April(10)), April(17))));

    private static Book Answered(Book book, Func<Book, Result<Household>> answer)
    {
        Result<Household> household = answer(book);
        Assert.True(household.Ok, household.Fault.Said());
        return HouseholdChange.Of(book, household.Value).Value!;
    }

    private static Book Close(Book book, LocalDate payday, decimal? fill = null)
    {
        RoutineDraft draft = new(payday);
        Result<Book> closing = Closing.Of(Routine.Plan(book, fill is { } by ? draft with { Fills = PotSums(("boots", by)) } : draft).Value!);
        Assert.True(closing.Ok, closing.Faults.Said());
        return closing.Value;
    }

    private static RoutinePlan Plan(Book book, LocalDate payday) => Routine.Plan(book, new RoutineDraft(payday)).Value!;

    private static PotRow Row(Book book, LocalDate payday) => Plan(book, payday).Pots.Rows.Single();

    private static (Money Fill, string Why) Proposed(Book book, LocalDate payday) => (Row(book, payday).Wanted, Row(book, payday).Why);

    private static LocalDate March(int day) => new(2026, 3, day);

    private static LocalDate April(int day) => new(2026, 4, day);
}

/// <summary>Money spent from the pot of these tests.</summary>
file static class Purchases
{
    public static Book Buy(this Book book, decimal amount, LocalDate date) =>
        Purchasing.Enter(book, new PurchaseEntry(date, new PotId("boots"), Usd(amount), "shop")).Value!;
}
