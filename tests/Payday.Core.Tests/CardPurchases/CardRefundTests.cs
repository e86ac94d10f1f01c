using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CardPurchases;

public class CardRefundTests
{
    private static readonly string[] Owing = ["food", "fares"];

    private static readonly LocalDate Sunday8 = new(2026, 3, 8);
    private static readonly LocalDate Tuesday10 = new(2026, 3, 10);

    // As if the purchase had been smaller by the refund: 12.34 owes 15, 7.34 owes 10, 11.34 still 15.
    [Theory]
    [InlineData(12.34, 5, 10)]
    [InlineData(12.34, 1, 15)]
    [InlineData(12.34, 12.34, 0)]
    [InlineData(15, 5, 10)]
    public void Enter_OfAPurchaseThatIsStillOwed_LowersWhatIsOwed(decimal bought, decimal back, decimal owed)
    {
        Book book = Refund(Closed.Spend("food", bought, Sunday8), back);

        Assert.Equal((Usd(owed), Usd(back - bought), Usd(60 - owed)), (book.Has("cash/owed-back:food"), book.Has("account/owed-back:food"), book.Has("cash/wallet:food")));
        Assert.Equal((Usd(-back), true), (book.Weeks.Purchases[1].Amount, book.Weeks.Purchases[1].IsRefund));
        Assert.Equal(Usd(bought - back), book.Has("outside/spending:food"));
        Assert.Equal(owed == 0 ? [] : [Usd(owed)], OwedItems.Of(book).Select(item => item.Left));
        AssertSound(book);
    }

    // 12 owe 15 and 6 owe 10: a refund of 6 is of the later purchase, which owes nothing then; of the earlier one it would free 5.
    [Fact]
    public void Enter_WithSeveralPurchases_IsOfTheLatest()
    {
        Book book = Refund(Closed.Spend("food", 12, Sunday8).Spend("food", 6, new(2026, 3, 9)), 6);

        Assert.Equal((Usd(15), Usd(45)), (book.Has("cash/owed-back:food"), book.Has("cash/wallet:food")));
        Assert.Equal([(1L, Usd(15))], OwedItems.Of(book).Select(item => (item.Key.Number, item.Left)));
    }

    [Fact]
    public void Enter_Returned_SettlesWhatIsLeft()
    {
        Book book = Refund(Closed.Spend("food", 12.34m, Sunday8).Spend("food", 8, new(2026, 3, 9)), 5);
        Book back = ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;

        Assert.Equal((Usd(0), Usd(0)), (back.Has("cash/owed-back:food"), back.Has("account/owed-back:food")));
        Assert.Empty(OwedItems.Of(back));
        AssertSound(back);
    }

    // What is above what is owed waits for the next fill, exact; a pot in the account and the buffer have theirs again.
    [Theory]
    [InlineData("food", 13, "account/kept-back:food", 0.66)]
    [InlineData("fares", 1, "account/kept-back:fares", 1)]
    [InlineData("gifts", 1.01, "account/pot:gifts", 1.01)]
    [InlineData(null, 900, "account/buffer", 900)]
    public void Enter_BeyondWhatIsOwed_GoesBackToItsPurpose(string? pot, decimal amount, string end, decimal more)
    {
        Book before = Closed.Spend("food", 12.34m, Sunday8);
        Result<Book> entered = CardRefunds.Enter(before, new PurchaseEntry(Tuesday10, pot is null ? null : new PotId(pot), Usd(amount), ""));

        Assert.True(entered.Ok, entered.Fault.Said());
        Assert.Equal(before.Has(end) + Usd(more), entered.Value.Has(end));
        Assert.Equal(before.Ledger.Balances.In(Place.Account) + Usd(amount), entered.Value.Ledger.Balances.In(Place.Account));
        Assert.Equal(before.Ledger.Balances.All, Purchasing.Undo(entered.Value, 2, Tuesday10).Value!.Ledger.Balances.All);
        AssertSound(entered.Value);
    }

    // It can't be for what was bought later.
    [Fact]
    public void Enter_BeforeThePurchase_IsKeptBack()
    {
        Book book = CardRefunds.Enter(Closed.Spend("food", 5, Tuesday10), new PurchaseEntry(Sunday8, new PotId("food"), Usd(5), "")).Value!;

        Assert.Equal((Usd(5), Usd(5)), (book.Has("account/kept-back:food"), book.Has("cash/owed-back:food")));
    }

    [Fact]
    public void KeptBack_JoinsTheNextFill()
    {
        Book book = Refund(Closed, 5);
        Book next = Close(book, Friday6March.PlusDays(14));

        Assert.Equal((Usd(0), Usd(245)), (next.Has("account/kept-back:food"), next.Has("cash/pot:food")));
        Assert.Equal(
            "The money of card purchase 1 has gone on since, to the payday of 20 Mar 2026; take that back first.",
            Purchasing.Undo(next, 1, Friday6March.PlusDays(14)).Fault.Said());
    }

    [Fact]
    public void Purchase_BelowZero_IsARefund()
    {
        Book book = Purchasing.Enter(Closed.Spend("food", 12.34m, Sunday8), new PurchaseEntry(Tuesday10, new PotId("food"), Usd(-5), "shop")).Value!;

        Assert.Equal(Refund(Closed.Spend("food", 12.34m, Sunday8), 5).Ledger.Balances.All, book.Ledger.Balances.All);
        Assert.Equal("The amount is zero; write what the card paid, or below zero what came back.", Purchasing.Enter(Closed, new PurchaseEntry(Tuesday10, null, Usd(0), "")).Fault.Said());
    }

    [Fact]
    public void Undo_Refund_OwesAsBefore()
    {
        Book before = Closed.Spend("food", 12.34m, Sunday8);
        Book undone = Purchasing.Undo(Refund(before, 5), 2, Tuesday10).Value!;

        Assert.Equal(OwedItems.Of(before), OwedItems.Of(undone));
        Assert.Equal(before.Ledger.Balances.All, undone.Ledger.Balances.All);
    }

    [Fact]
    public void Undo_OutOfOrder_SaysWhatComesFirst()
    {
        Book book = Refund(Refund(Closed.Spend("food", 12.34m, Sunday8), 5), 2);

        Assert.Equal("A refund lowered what card purchase 1 leaves to pay back; undo the refund first.", Purchasing.Undo(book, 1, Tuesday10).Fault.Said());
        Assert.Equal("Refund 3 of the same pot came after it; undo that first.", Purchasing.Undo(book, 2, Tuesday10).Fault.Said());
        Assert.Equal("A refund can't be changed; undo it, and enter it again.", Purchasing.Change(book, 3, new PurchaseEntry(Tuesday10, new PotId("food"), Usd(1), ""), Tuesday10).Fault.Said());
    }

    // What names the refund to undo first is the last one of that pot and card, whatever came back for others since.
    [Fact]
    public void Undo_OfARefundedPurchase_NamesTheLastRefundOfItsPot()
    {
        Book book = CardRefunds.Enter(Refund(Refund(Closed.Spend("food", 12.34m, Sunday8), 5), 2), new PurchaseEntry(Tuesday10, new PotId("gifts"), Usd(1), "")).Value!;

        Assert.Equal(new Obstacle.Refunded(new BookEntry.Purchase(1), new BookEntry.Purchase(3)), Purchasing.InTheWay(book, 1));
        Assert.Null(Purchasing.InTheWay(book, 3));
        Assert.Null(Purchasing.InTheWay(book, 4));
    }

    // The pot is saved since and has nothing in its envelope; the notes of the refund are still in its wallet.
    [Fact]
    public void Undo_RefundOfAPotThatIsSavedSince_IsFree()
    {
        Book filled = WalletFills.FillAll(WalletFills.FillAll(Closed, Friday6March).Value!, Friday13March).Value!;
        Book book = CardRefunds.Enter(filled.Spend("food", 60, Friday13March), new PurchaseEntry(Friday13March, new PotId("food"), Usd(60), "shop")).Value!;
        Book saved = book with { Household = House with { Pots = House.Pots.SetItem(0, House.Pots[0] with { Kind = new PotKind.Reserve(Usd(500), Usd(5)) }) } };

        Assert.Null(Purchasing.InTheWay(saved, 2));
        Book spent = Purchasing.Enter(saved, new PurchaseEntry(Friday13March, new PotId("food"), Usd(120), "shop")).Value!;
        Assert.IsType<Obstacle.GoneOn>(Purchasing.InTheWay(spent, 2));
    }

    [Fact]
    public void Enter_OnTheHouseholdsFirstDay_IsTheEarliest()
    {
        PurchaseEntry entry = new(Friday6March, new PotId("gifts"), Usd(5), "");

        Assert.True(CardRefunds.Enter(Closed, entry).Ok);
        Assert.True(Purchasing.Enter(Closed, entry).Ok);
        Assert.Equal(new PurchaseFault.BeforeStart(new(2026, 3, 5), Friday6March), CardRefunds.Enter(Closed, entry with { Date = new(2026, 3, 5) }).Fault);
        Assert.Equal(new PurchaseFault.BeforeStart(new(2026, 3, 5), Friday6March), Purchasing.Enter(Closed, entry with { Date = new(2026, 3, 5) }).Fault);
    }

    // The ledger's list says what each movement was.
    [Fact]
    public void Enter_ItsMovements_SayWhatTheyWere()
    {
        Book bought = Closed.Spend("food", 12.34m, Sunday8, " shop ");
        Assert.Equal(["card: shop", "to pay back"], bought.Ledger.Movements.TakeLast(2).Select(movement => movement.Reason));
        Assert.Equal("card purchase", Closed.Spend("gifts", 5, Sunday8, " ").Ledger.Movements[^1].Reason);
        Assert.Equal(["refund: shop", "no longer to pay back"], Refund(bought, 12.34m).Ledger.Movements.TakeLast(2).Select(movement => movement.Reason));
        Assert.Equal("refund", CardRefunds.Enter(Closed, new PurchaseEntry(Tuesday10, null, Usd(1), " ")).Value!.Ledger.Movements[^1].Reason);
        Assert.Equal("card purchase undone", Purchasing.Undo(bought, 1, Tuesday10).Value!.Ledger.Movements[^1].Reason);
    }

    [Fact]
    public void Undo_RefundOfWhatWasReturnedSince_IsRefused()
    {
        Book book = ReturnPlan.Of(Refund(Closed.Spend("food", 12.34m, Sunday8), 5), ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;

        Assert.Equal("What was left of refund 2's purchase was taken to the bank by the cash return of 13 Mar 2026; take that back first.", Purchasing.Undo(book, 2, Friday13March).Fault.Said());
        Assert.True(Purchasing.Undo(ReturnUndo.Of(book, ReturnUndo.Last(book)!, Friday13March).Value!, 2, Friday13March).Ok);

        // A return that settled other pots too is one all the same; one of other pots alone isn't.
        Book both = ReturnPlan.Of(Refund(Closed.Spend("food", 12.34m, Sunday8).Spend("fares", 5, Sunday8), 5), ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;
        Assert.IsType<Obstacle.RefundReturned>(Purchasing.InTheWay(both, 3));
        Book others = ReturnPlan.Of(Refund(Closed.Spend("food", 12.34m, Sunday8), 12.34m).Spend("fares", 5, Tuesday10), ReturnDraft.AsPlanned).Confirm(Friday13March).Value!;
        Assert.Null(Purchasing.InTheWay(others, 2));
    }

    [Fact]
    public void List_RefundAmongTheLines_IsEnteredAfterWhatItIsFor()
    {
        PurchaseLine bought = new(2, new PurchaseEntry(Sunday8, new PotId("food"), Usd(12.34m), "Shop"), null) { Choice = PotChoice.Chosen };
        PurchaseLine back = new PurchaseLine(1, new PurchaseEntry(Sunday8, new PotId("food"), Usd(5), "Shop"), null) { IsRefund = true, Choice = PotChoice.Chosen };

        Assert.Equal([Usd(12.34m), Usd(-5)], PurchaseList.Enter(Closed, [back, bought]).Value!.Weeks.Purchases.Select(purchase => purchase.Amount));
        Assert.Equal(Usd(5), PurchaseList.Enter(Closed, [back]).Value!.Has("account/kept-back:food"));
    }

    // Whatever is bought, comes back, is returned and undone: the items always come to what the ledger holds.
    [Fact]
    public void AnyCourse_ItemsComeToTheLedger() => Gen.Select(Gen.Int[0, 9], Gen.Int[1, 2500], Gen.Int[0, 6], Gen.Bool).Array[1, 14].Sample(steps =>
    {
        Book book = steps[0].Item4 ? Closed : Close(Book.Begin(House with { Settings = House.Settings with { CardRounding = CardRounding.Exact } }), Friday6March);
        foreach ((int what, int cents, int day, _) in steps)
        {
            LocalDate date = Sunday8.PlusDays(day);
            var entry = new PurchaseEntry(date, new PotId(cents % 3 == 0 ? "fares" : "food"), Money.FromMinorUnits(cents, Dollars), "shop");
            Result<Book> next = what switch
            {
                < 4 => Purchasing.Enter(book, entry),
                < 7 => CardRefunds.Enter(book, entry),
                7 => ReturnPlan.Of(book, ReturnDraft.AsPlanned).Confirm(new(2026, 3, 19)),
                8 => ReturnUndo.Last(book) is { } back ? ReturnUndo.Of(book, back, new(2026, 3, 19)) : Result.Of(book),
                _ => Purchasing.Undo(book, 1 + (cents % Math.Max(1, book.Weeks.Purchases.Count)), date),
            };
            book = next.Ok ? next.Value : book;
            foreach (string pot in Owing)
            {
                OwedItem[] items = [.. OwedItems.Of(book).Where(item => item.PotId == new PotId(pot))];
                Assert.Equal(book.Has($"cash/owed-back:{pot}"), Money.Sum(items.Select(item => item.Left), Dollars));
                Assert.Equal(-book.Has($"account/owed-back:{pot}"), Money.Sum(items.Select(item => item.Short), Dollars));
            }

            AssertSound(book);
        }
    });

    private static Book Refund(Book book, decimal amount)
    {
        Result<Book> entered = CardRefunds.Enter(book, new PurchaseEntry(Tuesday10, new PotId("food"), Usd(amount), "shop"));
        Assert.True(entered.Ok, entered.Fault.Said());
        return entered.Value;
    }
}
