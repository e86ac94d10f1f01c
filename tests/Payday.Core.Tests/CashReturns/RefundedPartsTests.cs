using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.CashReturns;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.CashReturns;

/// <summary>What refunds take off what purchases owe: the latest first, what was brought by then left alone. The figures are worked out by hand.</summary>
public class RefundedPartsTests
{
    private static readonly PotId Food = new("food");
    private static readonly LocalDate Eleventh = new(2026, 3, 11);

    // 12.34 owes 15; 16, entered later of the day before, owes 20.
    private static readonly Book Two = Closed.Spend("food", 12.34m, new(2026, 3, 9)).Spend("food", 16, new(2026, 3, 8));

    // Off the second: 14 owe 15 of 20. Off the first it would have been 10.34, which owes its 15.
    [Fact]
    public void Refund_OfTwo_IsOffTheOneEnteredLast() =>
        Assert.Equal([(2L, 15m, 14m), (1L, 15m, 12.34m)], Items(Refund(Two, 2)));

    // 5 off the second leave 11, which owe 15; 20 more take those 11 and 9 off the first, of which 3.34 owe 5.
    [Fact]
    public void Refund_AfterAnother_GoesOnWhereThatStopped()
    {
        Assert.Equal([(2L, 15m, 11m), (1L, 15m, 12.34m)], Items(Refund(Two, 5)));
        Assert.Equal([(1L, 5m, 3.34m)], Items(Refund(Refund(Two, 5), 20)));
    }

    // 10 of the 20 were brought before: 6 are short still and have 10 to come, so 12 take those and 6 off the first, of which 6.34 owe 10.
    [Fact]
    public void Refund_AfterAPartWasBrought_LeavesWhatIsAtTheBank()
    {
        Book brought = Brought(Two, 10);
        Assert.Equal([(2L, 10m, 6m), (1L, 15m, 12.34m)], Items(brought));
        Assert.Equal([(1L, 10m, 6.34m)], Items(Refund(brought, 12)));
        Assert.Equal([(2L, 5m, 4m), (1L, 15m, 12.34m)], Items(Refund(brought, 2)));
    }

    // What is brought after a refund changes nothing of what that was taken off.
    [Fact]
    public void Return_AfterARefund_SettlesWhatThatLeft()
    {
        Book refunded = Refund(Two, 5);
        Assert.Equal([(2L, 5m, 1m), (1L, 15m, 12.34m)], Items(Brought(refunded, 10)));
        Assert.Equal([(1L, 10m, 7.34m)], Items(Brought(refunded, 20)));
    }

    // Of another pot or by another card, or bought after it, nothing is taken off.
    [Fact]
    public void Refund_OfSomethingElse_LowersNothing()
    {
        Book bought = Purchasing.Enter(Two, new PurchaseEntry(new(2026, 3, 10), Food, Usd(8), "shop") { Card = new DebtId("card") }).Value!;

        Assert.Equal(Items(bought), Items(CardRefunds.Enter(bought, new PurchaseEntry(Eleventh, new PotId("fares"), Usd(5), "")).Value!));
        Assert.Equal([(2L, 15m, 11m), (1L, 15m, 12.34m), (3L, 10m, 8m)], Items(Refund(bought, 5)));
        Book card = CardRefunds.Enter(bought, new PurchaseEntry(Eleventh, Food, Usd(5), "") { Card = new DebtId("card") }).Value!;
        Assert.Equal([(2L, 20m, 16m), (1L, 15m, 12.34m), (3L, 5m, 3m)], Items(card));
        Assert.Equal(card.Has("cash/owed-back:food"), Usd(40));
        Assert.Equal(new DebtId("card"), card.Weeks.Purchases[^1].Card);
        Assert.Equal([(2L, 15m, 11m), (1L, 15m, 12.34m)], Items(CardRefunds.Enter(Two, new PurchaseEntry(new(2026, 3, 8), Food, Usd(5), "")).Value!));
    }

    private static IEnumerable<(long, decimal, decimal)> Items(Book book) =>
        OwedItems.Of(book).Select(item => (item.Key.Number, item.Left.ToDecimal(), item.Short.ToDecimal()));

    private static Book Refund(Book book, decimal amount) => CardRefunds.Enter(book, new PurchaseEntry(Eleventh, Food, Usd(amount), "shop")).Value!;

    private static Book Brought(Book book, decimal amount)
    {
        var writer = new WeekWriter(book);
        new ReturnWriter(writer, Eleventh, null).Settle(Food, Usd(amount), null, LedgerEnd.InCash(Purpose.OwedBack(Food)));
        return writer.Book;
    }
}
