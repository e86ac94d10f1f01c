using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Fills;
using Payday.Core.Histories;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Status;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Status;

public class OverviewTests
{
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);

    [Fact]
    public void Status_PaydayToday_IsWaiting()
    {
        BookStatus status = BookStatus.Of(Book.Begin(House), Friday6March);
        Assert.Equal((Friday6March, true, true), (status.NextPayday!.Value, status.PaydayDue, status.IsWaiting));
    }

    [Fact]
    public void Status_AllDone_IsNotWaiting()
    {
        Book book = Closed;
        foreach (FillPart part in WalletFills.Waiting(book, Friday6March))
        {
            book = WalletFills.Mark(book, part.Key, FillState.Done, Friday6March).Value!;
        }

        // What the payday put on a debt is paid as well, so the bank's list has its tick.
        book = PaymentToMake.Of(book).Aggregate(book, (before, payment) => payment.Turned(before));
        BookStatus status = BookStatus.Of(book, Thursday12);
        Assert.Equal(new BookStatus(new(2026, 3, 20), false, null, 0, Usd(0), 0) { ExtraToPay = Usd(0) }, status);
        Assert.False(status.IsWaiting);
        Assert.Equal(Friday6March, BookStatus.Of(book, Friday13March).CountOpenSince);
        Assert.Equal(Usd(15), BookStatus.Of(book.Spend("food", 12, Thursday12), Thursday12).OwedBack);
    }

    [Fact]
    public void Status_FillsOfThisWeek_AreWaiting() => Assert.Equal(2, BookStatus.Of(Closed, Friday6March).FillsWaiting);

    [Fact]
    public void History_CountsAndPurchases_GiveAWeeksAverage()
    {
        Book book = Closed.Spend("food", 12, new(2026, 3, 8))
            .Count(Thursday12, "food", 21.50m)
            .Count(new(2026, 3, 19), "food", new CountEntry(Usd(0)) { Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) });

        PotHistory history = PotHistory.Of(book, new PotId("food"));

        // 23.50 and 12 by card, then 81.50.
        Assert.Equal((2, Usd(58.50m)), (history.Weeks, history.SpentAWeek!.Value));
        Assert.Equal(
            [PotEvent.Fill, PotEvent.Wallet, PotEvent.Card, PotEvent.OwedBack, PotEvent.Counted, PotEvent.Wallet, PotEvent.Counted],
            history.Lines.Select(line => line.Kind));
    }

    // 10 at the start, 120 filled on the 6th; 12 by card put 15 apart on the 8th; 21.50 left of the 55 of that week on the 12th.
    [Fact]
    public void History_OpeningAndBalances_AreWhatTheLedgerHad()
    {
        Household house = House with { Start = new(2026, 3, 5), Opening = House.Opening with { Pots = PotSums(("food", 10)) } };
        Book book = Close(Book.Begin(house), Friday6March).Spend("food", 12, new(2026, 3, 8)).Count(Thursday12, "food", 21.50m);

        PotHistory history = PotHistory.Of(book, new PotId("food"));

        Assert.Equal(new PotHistoryLine(new(2026, 3, 5), PotEvent.Opening, Usd(10), null, ""), history.Lines[0]);
        Assert.Null(history.On(new(2026, 3, 4)));
        (int Day, Money Has)[] days = [(5, Usd(10)), (6, Usd(130)), (7, Usd(130)), (8, Usd(115)), (12, Usd(81.50m))];
        Assert.All(days, day => Assert.Equal(day.Has, history.On(new(2026, 3, day.Day))));
    }

    [Fact]
    public void Year_RoundingOfOwedBackCash_IsNotTakenFromWhatWentToPots()
    {
        Book book = ReturnPlan.Of(Closed.Spend("food", 13.42m, new(2026, 3, 8)), ReturnDraft.AsPlanned).Confirm(Thursday12).Value!;
        Core.Ledgers.MonthSummary before = Core.Ledgers.MonthSummary.OfYear(Closed.Ledger, 2026)[2];
        Core.Ledgers.MonthSummary march = Core.Ledgers.MonthSummary.OfYear(book.Ledger, 2026, Roundings.Of(book))[2];

        Assert.Equal((before.Fills, Usd(1.58m), Usd(13.42m)), (march.Fills, march.Rounding, march.Spent));
    }

    [Fact]
    public void Year_WhatACountMissed_IsApartFromWhatWasSpent()
    {
        Core.Ledgers.MonthSummary even = March(Closed.Count(Thursday12, "food", new CountEntry(Usd(20))));
        Core.Ledgers.MonthSummary short1 = March(Closed.Count(Thursday12, "food", new CountEntry(Usd(19)) { Missing = Usd(1), DifferenceName = "short" }));

        Assert.Equal((even.Spent, Usd(0), Usd(1)), (short1.Spent, even.Missing, short1.Missing));
        Assert.Equal(even.Fills, short1.Fills);

        static Core.Ledgers.MonthSummary March(Book book) => Core.Ledgers.MonthSummary.OfYear(book.Ledger, 2026, Roundings.Of(book))[2];
    }

    // What a count moves on to the buffer is taken from the pot, and no rounding.
    [Fact]
    public void Year_WhatMovesOnToTheBuffer_IsTakenFromWhatWentToPots()
    {
        Book book = Closed.Count(Thursday12, "food", new CountEntry(Usd(20)) { Then = new CountThen(MoveTarget.Buffer) });
        book = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Thursday12).Value!;
        Core.Ledgers.MonthSummary before = Core.Ledgers.MonthSummary.OfYear(Closed.Ledger, 2026)[2];
        Core.Ledgers.MonthSummary march = Core.Ledgers.MonthSummary.OfYear(book.Ledger, 2026, Roundings.Of(book))[2];

        Assert.Equal((before.Fills - Usd(20), Usd(0)), (march.Fills, march.Rounding));
    }

    [Fact]
    public void History_FilledTheEveningBefore_CountsOneWeek()
    {
        Book book = Close(Book.Begin(House with { Settings = House.Settings with { FillDay = IsoDayOfWeek.Saturday } }), Friday6March);
        FillPart food = FillPart.Of(book).First(part => part.Pot.Id == new PotId("food"));
        book = WalletFills.Mark(book, food.Key, FillState.Done, Friday6March).Value!.Count(Friday13March, "food", 10);

        Assert.Equal(1, PotHistory.Of(book, new PotId("food")).Weeks);
    }

    [Fact]
    public void History_OwedBackCash_IsThereWhenItIsOwedAndWhenItIsBack()
    {
        LocalDate sunday8 = new(2026, 3, 8);
        Book book = Closed.Spend("food", 12, sunday8, "Bakery");
        Assert.Equal(new PotHistoryLine(sunday8, PotEvent.OwedBack, Usd(15), null, "Bakery"), PotHistory.Of(book, new PotId("food")).Lines[^1]);

        book = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Thursday12).Value!;
        Assert.Equal(new PotHistoryLine(Thursday12, PotEvent.Returned, Usd(15), null, ""), PotHistory.Of(book, new PotId("food")).Lines[^1]);
    }

    // So that a person can follow the page from the top to what there is.
    [Fact]
    public void Change_OfAllLines_ComesToWhatThePotHas()
    {
        Book book = WalletFills.FillAll(Closed, Friday6March).Value!.Spend("food", 12, new(2026, 3, 8), "Bakery");
        book = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Thursday12).Value!
            .Count(Thursday12, "food", new CountEntry(Usd(20)) { Missing = Usd(1), DifferenceName = "short", Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) });

        foreach (PotId pot in (PotId[])[new("food"), new("boots")])
        {
            PotHistory history = PotHistory.Of(book, pot);
            Assert.Equal(history.On(Thursday12), Money.Sum(history.Lines.Select(line => line.Change).OfType<Money>(), House.Currency));
        }

        Assert.Equal((null, Usd(-15)), (Line(PotEvent.Card), Line(PotEvent.OwedBack)));
        Money? Line(PotEvent kind) => PotHistory.Of(book, new PotId("food")).Lines.Single(line => line.Kind == kind).Change;
    }

    [Fact]
    public void History_MovesAndDifferences_AreLinesOfBothPots()
    {
        Book book = Closed.Count(Thursday12, "food", new CountEntry(Usd(20)) { Missing = Usd(1), DifferenceName = "short", Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) });

        Assert.Contains(new PotHistoryLine(Thursday12, PotEvent.Move, Usd(-20), null, "to Boots"), PotHistory.Of(book, new PotId("food")).Lines);
        Assert.Contains(new PotHistoryLine(Thursday12, PotEvent.Difference, Usd(-1), null, "short"), PotHistory.Of(book, new PotId("food")).Lines);
        Assert.Contains(new PotHistoryLine(Thursday12, PotEvent.Move, Usd(20), null, "from Food"), PotHistory.Of(book, new PotId("boots")).Lines);
        Assert.Null(PotHistory.Of(book, new PotId("boots")).SpentAWeek);
    }

    [Fact]
    public void History_CountOverTwoWeeks_CountsBoth() =>
        Assert.Equal((2, Usd(60)), PotHistory.Of(Closed.Count(new(2026, 3, 19), "food", 0), new PotId("food")) is var history ? (history.Weeks, history.SpentAWeek!.Value) : default);
}
