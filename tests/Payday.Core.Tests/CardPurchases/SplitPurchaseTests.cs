using System.Collections.Immutable;
using NodaTime;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Histories;
using Payday.Core.Ids;
using Payday.Core.Tests.Faults;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CardPurchases;

/// <summary>One purchase over several pots: a line at the bank, and a part for each pot.</summary>
public class SplitPurchaseTests
{
    private static readonly LocalDate Day = Friday6March.PlusDays(3);

    [Fact]
    public void Enter_OverSeveralPots_EachOwesItsOwnPartAndTheBankHasOneLine()
    {
        Book book = Bought(("food", 41), ("gifts", 11.20m), (null, 2));

        Assert.Equal((Usd(45), Usd(-41)), (book.Has("cash/owed-back:food"), book.Has("account/owed-back:food")));
        Assert.Equal((Usd(3.80m), Closed.Has("account/buffer") - Usd(2)), (book.Has("account/pot:gifts"), book.Has("account/buffer")));
        Assert.Equal([1L, 1, 1], book.Weeks.Purchases.Select(part => part.Whole!.Value));
        AccountLine line = Assert.Single(AccountLines.Of(book).All, line => line.Date == Day);
        Assert.Equal((Usd(-54.20m), AccountLineKind.Payment, "market"), (line.Amount, line.Kind, line.What));
        AssertSound(book);
    }

    [Fact]
    public void PotHistory_OfEachPot_HasItsPart()
    {
        Book book = Bought(("food", 41), ("gifts", 11.20m));

        Assert.Equal(Usd(41), PotHistory.Of(book, new PotId("food")).Lines.Single(line => line.Kind == PotEvent.Card).Amount);
        Assert.Equal(Usd(11.20m), PotHistory.Of(book, new PotId("gifts")).Lines.Single(line => line.Kind == PotEvent.Card).Amount);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Undo_OfAnyPart_TakesAllBack(long number)
    {
        Book undone = Said(Purchasing.Undo(Bought(("food", 41), ("gifts", 11.20m)), number, Day));

        Assert.Equal(Closed.Ledger.Balances.All, undone.Ledger.Balances.All.Where(end => !end.Value.IsZero));
        Assert.All(undone.Weeks.Purchases, part => Assert.True(part.Undone));
    }

    [Fact]
    public void Undo_OncePartOfItIsAtTheBank_NamesTheReturnForAll()
    {
        Book book = ReturnPlan.Of(Bought(("gifts", 11.20m), ("food", 41)), ReturnDraft.AsPlanned).Confirm(Day).Value!;

        Obstacle.CashAtBank inTheWay = Assert.IsType<Obstacle.CashAtBank>(Purchasing.InTheWay(book, 1));
        Assert.Equal(new BookEntry.Purchase(1), inTheWay.What);
    }

    [Fact]
    public void Enter_WhereOnePotHasTooLittle_EntersNoPart()
    {
        Result<Book> entered = Purchasing.Enter(Closed, Entry(("food", 20), ("gifts", 15.01m)));

        Assert.IsType<PurchaseFault.PotHasLess>(entered.Fault);
    }

    [Fact]
    public void Enter_PartsThatMakeNoSense_AreRefused()
    {
        Assert.Equal(new PurchaseFault.SamePotTwice("Food"), Purchasing.Enter(Closed, Entry(("food", 20), ("gifts", 1), ("food", 3))).Fault);
        Assert.Equal(new PurchaseFault.SamePotTwice(null), Purchasing.Enter(Closed, Entry((null, 20), (null, 1))).Fault);
        Assert.Equal(new PurchaseFault.BothWays(), Purchasing.Enter(Closed, Entry(("food", 20), ("gifts", -1))).Fault);
        Assert.Equal(new PurchaseFault.Zero(), Purchasing.Enter(Closed, Entry(("food", 20), ("gifts", 0))).Fault);
    }

    [Fact]
    public void Enter_BelowZero_IsOneRefundOverSeveralPots()
    {
        Book book = Said(Purchasing.Enter(Bought(("food", 41), ("gifts", 11.20m)), Entry(("food", -10), ("gifts", -1.20m))));

        Assert.Equal((Usd(-31), Usd(35), Usd(5)), (book.Has("account/owed-back:food"), book.Has("cash/owed-back:food"), book.Has("account/pot:gifts")));
        Assert.Equal(Usd(11.20m), AccountLines.Of(book).All[^1].Amount);
        Assert.Equal(new BookEntry.Purchase(3), Assert.IsType<Obstacle.Refunded>(Purchasing.InTheWay(book, 2)).Refund);
        Assert.Equal(Bought(("food", 41), ("gifts", 11.20m)).Ledger.Balances.All, Said(Purchasing.Undo(book, 4, Day)).Ledger.Balances.All);
    }

    [Fact]
    public void Change_ToOtherParts_PutsTheWholeInThePlaceOfTheWhole()
    {
        Book changed = Said(Purchasing.Change(Bought(("food", 41), ("gifts", 11.20m)), 2, Entry(("food", 40), ("fares", 14.20m)), Day));

        Assert.Equal(Bought(("food", 40), ("fares", 14.20m)).Ledger.Balances.All, changed.Ledger.Balances.All.Where(end => !end.Value.IsZero));
    }

    // A shop of which some is always for another pot is no guide to one.
    [Fact]
    public void PotGuess_OfWhatWasBoughtForSeveralPots_IsNone()
    {
        Assert.Null(PotGuess.For(Bought(("food", 41), ("gifts", 11.20m)), "market"));
    }

    [Fact]
    public void PurchaseList_LineOverTwoPots_IsEnteredAsOne()
    {
        PurchaseList list = new([new PurchaseLine(1, new PurchaseEntry(Day, null, Usd(54.20m), "market"), null)], []);

        Result<PurchaseList> split = list.Split(1, [(new PotId("food"), Usd(40)), (new PotId("gifts"), null)]);

        Assert.Equal(Bought(("food", 40), ("gifts", 14.20m)).Ledger.Balances.All, Said(PurchaseList.Enter(Closed, split.Value!.Lines)).Ledger.Balances.All);
        Assert.Equal(
            new PurchaseFault.PartsDiffer(Usd(54), Usd(54.20m)),
            list.Split(1, [(new PotId("food"), Usd(40)), (new PotId("gifts"), Usd(14))]).Fault);
    }

    [Fact]
    public void PurchaseParts_OfWhatWasSaid_AddUpOrSayWhyNot()
    {
        static Result<ImmutableArray<PurchasePart>> Parts(decimal? total, params (string Pot, decimal? Amount)[] said) => PurchaseParts.Of(
            [.. said.Select(part => ((PotId?)new PotId(part.Pot), part.Amount is { } amount ? Usd(amount) : (Core.Amounts.Money?)null))], total is { } whole ? Usd(whole) : null);

        Assert.Equal([Usd(40), Usd(14.20m)], Parts(54.20m, ("a", 40), ("b", null)).Value.Select(part => part.Amount));
        Assert.Equal([Usd(-14.20m), Usd(-40)], Parts(-54.20m, ("a", null), ("b", -40)).Value.Select(part => part.Amount));
        Assert.Equal([Usd(40), Usd(14.20m)], Parts(null, ("a", 40), ("b", 14.20m)).Value.Select(part => part.Amount));
        Assert.Equal(new PurchaseFault.RestTwice(), Parts(54.20m, ("a", null), ("b", null)).Fault);
        Assert.Equal(new PurchaseFault.RestOfUnknown(), Parts(null, ("a", 40), ("b", null)).Fault);
        Assert.Equal(new PurchaseFault.NothingLeft(Usd(54.20m), Usd(54.20m)), Parts(54.20m, ("a", 54.20m), ("b", null)).Fault);
        Assert.Equal(new PurchaseFault.NothingLeft(Usd(60), Usd(54.20m)), Parts(54.20m, ("a", 60), ("b", null)).Fault);
        Assert.Equal(new PurchaseFault.PartsDiffer(Usd(40), Usd(54.20m)), Parts(54.20m, ("a", 40)).Fault);
    }

    [Fact]
    public void PurchaseList_RefundOverTwoPots_GoesBackToBoth()
    {
        Book book = Bought(("food", 41), ("gifts", 11.20m));
        PurchaseList list = new([new PurchaseLine(1, new PurchaseEntry(Day, null, Usd(11.20m), "market"), null) { IsRefund = true }], []);

        Result<PurchaseList> split = list.Split(1, [(new PotId("food"), Usd(10)), (new PotId("gifts"), Usd(1.20m))]);

        Assert.Equal(
            Said(Purchasing.Enter(book, Entry(("food", -10), ("gifts", -1.20m)))).Ledger.Balances.All,
            Said(PurchaseList.Enter(book, split.Value!.Lines)).Ledger.Balances.All);
    }

    private static Book Bought(params (string? Pot, decimal Amount)[] parts) => Said(Purchasing.Enter(Closed, Entry(parts)));

    private static PurchaseEntry Entry(params (string? Pot, decimal Amount)[] parts) => new PurchaseEntry(Day, null, Usd(0), "market")
        .With([.. parts.Select(part => new PurchasePart(part.Pot is null ? null : new PotId(part.Pot), Usd(part.Amount)))]);

    private static Book Said(Result<Book> entered)
    {
        Assert.True(entered.Ok, entered.Fault.Said());
        AssertSound(entered.Value);
        return entered.Value;
    }
}
