using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.DuePayments.RentAndCard;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.DuePayments;

/// <summary>
/// Where the money of a payment comes from: the due's own, what was bought with the card, what is held for later, the buffer.
/// Rule: the project's design, section 5.9; the figures are worked out by hand.
/// </summary>
public class PayingOrderTests
{
    private static readonly LocalDate Tenth = new(2026, 3, 10);

    // 190 are held for the rent: 150 for March's, 40 for later.
    private static readonly Book Held = Moving.Enter(March, new MoveEntry(Friday6March, MoveEnds.Buffer, DueLines.Holding(Rent.Owner), Usd(40), "")).Value!;

    // The card asks for 25 each week, and 50 wait for 10 and 17 March.
    private static readonly Book Weekly = Close(
        Book.Begin(Home with { Bills = [], Debts = [Debt("Card", 6400, 0.12m, 25, due: 15) with { Schedule = new Schedule.EveryWeeks(1, Tenth) }], Pots = [AccountPot("Gifts", 15)] }),
        Friday6March);

    [Theory]
    [InlineData(150, 40, 160)]
    [InlineData(170, 20, 160)]
    [InlineData(195, 0, 155)]
    [InlineData(350, 0, 0)]
    public void Enter_ABill_TakesWhatIsHeldForLaterBeforeTheBuffer(int amount, int held, int buffer)
    {
        Book paid = Pay(Held, new DueEntry(Rent, new(2026, 3, 14), Usd(amount)));

        Assert.Equal((Usd(held), Usd(buffer), Usd(amount)), (paid.Has("account/set-aside:rent"), paid.Has("account/buffer"), paid.Has("outside/bill:rent")));
    }

    // Of what is held only the due's own is freed; what is there for later stays.
    [Fact]
    public void Enter_ARestThatIsFreed_LeavesWhatIsHeldForLater()
    {
        Book part = Pay(Held, new DueEntry(Rent, new(2026, 3, 14), Usd(100), FreesRest: true));
        Assert.Equal((Usd(50), Usd(40)), (part.Has("account/left-to-place"), part.Has("account/set-aside:rent")));

        // 30 were bought with the card; they are owed whatever becomes of the minimum.
        Book bought = Buy(Weekly, 10, new(2026, 3, 9));
        Book waived = Pay(bought, new DueEntry(new(new DebtId("card"), Tenth), new(2026, 3, 9), Usd(0), FreesRest: true));
        Assert.Equal((Usd(25), Usd(25), Usd(10)), (waived.Has("account/left-to-place"), waived.Has("account/for-debt:card"), waived.Has("account/for-card:card")));
    }

    // 50 wait for two weeks' minimums, 10 for what was bought: a payment of the first has its own 25, then the 10, then the other week's, then the buffer.
    [Theory]
    [InlineData(20, 30, 10, 200)]
    [InlineData(25, 25, 10, 200)]
    [InlineData(32, 25, 3, 200)]
    [InlineData(35, 25, 0, 200)]
    [InlineData(45, 15, 0, 200)]
    [InlineData(63, 0, 0, 197)]
    public void Enter_AMinimum_TakesItsOwnThenWhatWasBoughtThenTheLaterOnes(int amount, int held, int bought, int buffer)
    {
        Book book = Buy(Weekly, 10, new(2026, 3, 9));
        Book paid = Pay(book, new DueEntry(new(new DebtId("card"), Tenth), new(2026, 3, 9), Usd(amount)));

        Assert.Equal((Usd(held), Usd(bought), Usd(buffer)), (paid.Has("account/for-debt:card"), paid.Has("account/for-card:card"), paid.Has("account/buffer")));
        Assert.Equal(book.Has("owed/card") + Usd(amount), paid.Has("owed/card"));
        AssertSound(paid);
    }

    // Nothing waits for the minimum of the third week yet: what was bought with the card pays for it before the buffer does.
    [Theory]
    [InlineData(8, 2, 200)]
    [InlineData(25, 0, 185)]
    public void Enter_AMinimumThatNothingIsHeldFor_TakesWhatWaitsForTheCardFirst(int amount, int bought, int buffer)
    {
        Book book = Pay(Pay(Weekly, new DueEntry(new(new DebtId("card"), Tenth), new(2026, 3, 9))), new DueEntry(new(new DebtId("card"), new(2026, 3, 17)), new(2026, 3, 9)));
        Book paid = Pay(Buy(book, 10, new(2026, 3, 9)), new DueEntry(new(new DebtId("card"), new(2026, 3, 24)), new(2026, 3, 9), Usd(amount)));

        Assert.Equal((Usd(0), Usd(bought), Usd(buffer)), (paid.Has("account/for-debt:card"), paid.Has("account/for-card:card"), paid.Has("account/buffer")));
    }

    [Fact]
    public void Enter_MoreThanThereIs_SaysWhatThereIs()
    {
        Book book = Buy(Weekly, 10, new(2026, 3, 9));
        DueEntry entry = new(new(new DebtId("card"), Tenth), new(2026, 3, 9), Usd(260.01m));

        Assert.Equal(new DueFault.NotEnough("Card", Usd(260.01m), Usd(60), Usd(200)), Paying.Enter(book, entry, Tenth).Fault);
        Assert.True(Paying.Enter(book, entry with { Amount = Usd(260) }, Tenth).Ok);
    }

    // 300 at 12 %: 3.00 are charged on 15 March and 3.03 on 15 April. All of it can be paid, and no more.
    [Theory]
    [InlineData(14, 3, 300, 0)]
    [InlineData(15, 3, 303, 3)]
    [InlineData(15, 4, 306.03, 6.03)]
    public void Enter_AllThatIsOwed_PaysTheInterestUpToThatDayToo(int day, int month, decimal owed, decimal interest)
    {
        Book book = Book.Begin(Home with { Bills = [], Debts = [Debt("Card", 300, 0.12m, 25, due: 15)], Opening = Bare.Opening with { Account = Usd(500) } });
        DueEntry entry = new(Card, new LocalDate(2026, month, day), Usd(owed));
        Book paid = Pay(book, entry);

        Assert.Equal((Usd(0), Usd(interest)), (paid.Has("owed/card"), paid.Has("outside/interest:card")));
        Assert.Equal(new DueFault.MoreThanOwed("Card", Usd(owed)), Paying.Enter(book, entry with { Amount = Usd(owed + 0.01m) }, entry.Date).Fault);
    }

    // What the buffer got on the 13th can't have left it on the 10th; what was held by then did.
    [Fact]
    public void Enter_BeforeTheMoneyWasThere_IsDatedAsItCame()
    {
        Book gift = Entering.Enter(March, new EntryWish(Friday13March, EntryKind.Gift, MoveEnds.Buffer, Usd(100), "gift")).Value!;
        Book paid = Paying.Enter(gift, new DueEntry(Rent, Tenth, Usd(400)), Friday13March).Value!;

        Assert.Equal(
            [(Tenth, Usd(150)), (Friday13March, Usd(250))],
            paid.Ledger.Movements.TakeLast(2).Select(movement => (movement.Date, movement.Amount)));
        Assert.Equal(Tenth, paid.Weeks.Payments[0].Date);
    }

    // The ledger's list says what each movement was.
    [Fact]
    public void Enter_ItsMovements_SayWhatTheyWere()
    {
        Assert.Equal(["due 15 Mar 2026", "due 15 Mar 2026 freed"], Reasons(Pay(March, new DueEntry(Rent, Friday13March, Usd(100), FreesRest: true)), 2));
        Assert.Equal(["a month's interest", "minimum payment"], Reasons(Pay(March, new DueEntry(Card, new(2026, 3, 15))), 2));
        Assert.Equal(["payment undone"], Reasons(Paying.Undo(Pay(March, new DueEntry(Card, Friday13March)), 1, Second).Value!, 1));
    }

    private static IEnumerable<string> Reasons(Book book, int last) => book.Ledger.Movements.TakeLast(last).Select(movement => movement.Reason);

    private static Book Buy(Book book, decimal amount, LocalDate date) =>
        Purchasing.Enter(book, new PurchaseEntry(date, new PotId("gifts"), Usd(amount), "book") { Card = new DebtId("card") }).Value!;
}
