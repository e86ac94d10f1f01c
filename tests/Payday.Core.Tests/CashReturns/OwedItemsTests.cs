using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.Counts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CashReturns;

/// <summary>What pots owe the account, and where it goes once the cash is there (design, rules 8 and 12); the figures are worked out by hand.</summary>
public class OwedItemsTests
{
    private static readonly PotId Food = new("food");
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);
    private static readonly LedgerEnd Apart = LedgerEnd.InCash(Purpose.OwedBack(Food));

    [Fact]
    public void Of_AllThatIsOwed_IsThereOldestFirst()
    {
        Book book = Moving.Enter(
            Closed.Spend("food", 12.40m, new(2026, 3, 11)).Spend("fares", 5, new(2026, 3, 9)).Spend("gifts", 5, new(2026, 3, 8)),
            new MoveEntry(new(2026, 3, 10), LedgerEnd.FromKey("cash/pot:food"), LedgerEnd.FromKey("account/pot:gifts"), Usd(70), "cake")).Value!
            .Count(Thursday12, "boots", new CountEntry(Usd(30)) { Then = new CountThen(MoveTarget.Buffer) });

        Assert.Equal(
            [
                new OwedItem(new(OwedKind.Purchase, 2), new("fares"), new(2026, 3, 9), "shop", Usd(5), Usd(5), Usd(5), null),
                new OwedItem(new(OwedKind.Move, 1), Food, new(2026, 3, 10), "cake", Usd(70), Usd(70), Usd(0), null) { To = LedgerEnd.FromKey("account/pot:gifts") },
                new OwedItem(new(OwedKind.Purchase, 1), Food, new(2026, 3, 11), "shop", Usd(15), Usd(15), Usd(12.40m), null),
                new OwedItem(new(OwedKind.MovesOn, 1), new("boots"), Thursday12, "", Usd(30), Usd(30), Usd(0), MoveTarget.Buffer),
            ],
            OwedItems.Of(book));
    }

    // What goes from envelope to envelope owes the account nothing.
    [Fact]
    public void Of_WhatStaysCash_IsNothing()
    {
        Book moved = Moving.Enter(Closed, new MoveEntry(Thursday12, LedgerEnd.FromKey("cash/pot:food"), LedgerEnd.FromKey("cash/pot:boots"), Usd(10), "")).Value!;
        Book counted = Closed.Count(Thursday12, "food", new CountEntry(Usd(25)) { Then = new CountThen(MoveTarget.Pot(new PotId("boots"))) });

        Assert.Empty(OwedItems.Of(moved));
        Assert.Empty(OwedItems.Of(counted));
    }

    // 12.40 owes 15 and 8 owes 10. Of 20 brought the older has 12.40 and its 2.60 of rounding, the other 5; of 5 more that has its last 3 and 2 of rounding.
    [Fact]
    public void Settle_LessThanAll_PaysTheOldestFirstAndItsRounding()
    {
        Book book = Closed.Spend("food", 12.40m, new(2026, 3, 8)).Spend("food", 8, new(2026, 3, 9));
        Book once = Brought(book, 20);

        Assert.Equal([("cash return", 12.40m), ("rounding", 2.60m), ("cash return", 5m)], Written(book, once));
        Assert.Equal([(2L, Usd(5), Usd(3))], OwedItems.Of(once).Select(item => (item.Key.Number, item.Left, item.Short)));
        Assert.Equal([new SettledItem(new(OwedKind.Purchase, 1), Usd(15)), new SettledItem(new(OwedKind.Purchase, 2), Usd(5))], once.Weeks.Returns[0].Settles);

        Book twice = Brought(once, 5);
        Assert.Equal([("cash return", 3m), ("rounding", 2m)], Written(once, twice));
        Assert.Empty(OwedItems.Of(twice));
        Assert.Equal([1L, 2L], twice.Weeks.Returns.Select(back => back.Number));
        Assert.Equal((Usd(0), Usd(504.60m)), (twice.Has("account/owed-back:food"), twice.Has("account/buffer")));
    }

    [Theory]
    [InlineData("account/buffer")]
    [InlineData("account/pot:gifts")]
    public void Settle_WhatMovesOn_IsThereInTheAccount(string to)
    {
        Book counted = Counted(Closed, to == "account/buffer" ? MoveTarget.Buffer : MoveTarget.Pot(new PotId("gifts")));
        Book once = Brought(counted, 10);

        Assert.Equal([("moved", 10m)], Written(counted, once));
        Assert.Equal(counted.Has(to) + Usd(10), once.Has(to));
        Assert.Equal([Usd(15)], OwedItems.Of(once).Select(item => item.Left));
        Assert.Equal([Usd(5)], OwedItems.Of(Brought(once, 10)).Select(item => item.Left));
        Assert.Equal([Usd(15)], OwedItems.Of(Brought(Moved(Closed, to), 10)).Select(item => item.Left));
        Assert.Equal(Closed.Has(to) + Usd(25), Brought(Moved(Closed, to), 25).Has(to));
    }

    // 25 are promised to the card, and only 10 are owed on it when the cash is there.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Settle_ForADebtThatOwesLess_LeavesTheRestInTheBuffer(bool byCount)
    {
        Book closed = Close(Book.Begin(House with { Debts = [Debt("Card", 900, 0.12m, 25, due: 15)] }), Friday6March);
        Book promised = byCount ? Counted(closed, MoveTarget.Debt(new DebtId("card"))) : Moved(closed, "owed/card");
        Money owed = promised.Ledger.Balances.OwedOn(new DebtId("card"));
        Book paid = Moving.Enter(promised, new MoveEntry(Thursday12, MoveEnds.Buffer, new LedgerEnd.Owed(new DebtId("card")), owed - Usd(10), "")).Value!;
        Book back = Brought(paid, 25);

        Assert.Equal([("moved", 10m), ("moved", 10m), ("rounding", 15m)], Written(paid, back));
        Assert.Equal((Usd(0), paid.Has("account/buffer") + Usd(15)), (back.Has("owed/card"), back.Has("account/buffer")));
        Assert.Equal(paid.Has("account/for-debt:card"), back.Has("account/for-debt:card"));
    }

    // The pot or the debt that was to have it is gone by then.
    [Fact]
    public void Settle_ForWhatIsGone_GoesToTheBuffer()
    {
        Book[] promised =
        [
            Counted(Closed, MoveTarget.Pot(new PotId("gifts"))), Counted(Closed, MoveTarget.Debt(new DebtId("card"))), Moved(Closed, "account/pot:gifts"), Moved(Closed, "owed/card"),
        ];
        Assert.All(promised, book =>
        {
            Book gone = book with { Household = House with { Debts = [], Pots = [.. House.Pots.Where(pot => pot.Id.Text != "gifts")] } };
            Book back = Brought(gone, 25);
            Assert.Equal([("moved", 25m)], Written(gone, back));
            Assert.Equal(book.Has("account/buffer") + Usd(25), back.Has("account/buffer"));
        });
    }

    // Bought by a card that is a debt: what was paid waits for its next payment, and where the debt is gone it is the buffer's.
    [Fact]
    public void Settle_ForACardThatIsADebt_WaitsForThat()
    {
        Book bought = Purchasing.Enter(Closed, new PurchaseEntry(Thursday12, Food, Usd(12.40m), "shop") { Card = new DebtId("card") }).Value!;
        Book back = Brought(bought, 15);
        Assert.Equal([("waits for the card", 12.40m), ("rounding", 2.60m)], Written(bought, back));
        Assert.Equal(Usd(12.40m), back.Has("account/for-card:card"));

        Book gone = bought with { Household = House with { Debts = [] } };
        Assert.Equal([("cash return", 15m)], Written(gone, Brought(gone, 15)));
    }

    // A payday may use the notes of one pot for two others: each gives its part, and notes that aren't known make the sum of them unknown.
    [Fact]
    public void Settle_APotTwice_IsOnePotOfTheReturn()
    {
        Book book = Closed.Spend("fares", 5, Thursday12).Spend("food", 30, Thursday12);
        var writer = new WeekWriter(book);
        var back = new ReturnWriter(writer, Friday13March, null);
        back.Settle(Food, Usd(10), Notes((10, 1)), Apart);
        back.Settle(new PotId("fares"), Usd(5), Notes((5, 1)), LedgerEnd.InCash(Purpose.OwedBack(new PotId("fares"))));
        back.Settle(Food, Usd(5), Notes((5, 1)), Apart);
        Assert.Equal(
            [new ReturnedPot(Food, Usd(15), Notes((5, 1), (10, 1))), new ReturnedPot(new PotId("fares"), Usd(5), Notes((5, 1)))],
            writer.Book.Weeks.Returns[0].Pots);

        back.Settle(Food, Usd(10), null, Apart);
        back.Settle(Food, Usd(5), Notes((5, 1)), Apart);
        Assert.Equal(new ReturnedPot(Food, Usd(30), null), writer.Book.Weeks.Returns[0].Pots[0]);
        Assert.Equal((book.Ledger.Movements.Count + 1, writer.Last), (writer.Book.Weeks.Returns[0].FirstMovement, writer.Book.Weeks.Returns[0].LastMovement));
    }

    private static Book Counted(Book book, MoveTarget target) => book.Count(Thursday12, "food", new CountEntry(Usd(25)) { Then = new CountThen(target) });

    private static Book Moved(Book book, string to) =>
        Moving.Enter(book, new MoveEntry(Thursday12, LedgerEnd.FromKey("cash/pot:food"), LedgerEnd.FromKey(to), Usd(25), "")).Value!;

    // So much of the pot's cash is at the bank.
    private static Book Brought(Book book, decimal amount)
    {
        var writer = new WeekWriter(book);
        new ReturnWriter(writer, Friday13March, null).Settle(Food, Usd(amount), null, Apart);
        return writer.Book;
    }

    private static IEnumerable<(string, decimal)> Written(Book before, Book after) =>
        after.Ledger.Movements.Skip(before.Ledger.Movements.Count).Select(movement => (movement.Reason, movement.Amount.ToDecimal()));
}
