using NodaTime;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Tests.Lives;
using Payday.Core.Undo;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Counts;

public class DifferencesTests
{
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);
    private static readonly LocalDate Thursday19 = new(2026, 3, 19);

    // 10 of food are missing on the 19th, 5 of fares were found on the 12th, which was entered after it.
    private static readonly Book Both = Closed
        .Count(Thursday19, "food", new CountEntry(Usd(100)) { Missing = Usd(10), DifferenceName = "a note" })
        .Count(Thursday12, "fares", new CountEntry(Usd(25)) { IsFind = true, DifferenceName = "coat" });

    [Fact]
    public void Open_AreTheOldestFirst()
    {
        Assert.Equal([("fares", Usd(-5)), ("food", Usd(10))], Differences.Open(Both).Select(count => (count.PotId.Text, count.Difference)));
        Assert.Equal(["food"], Differences.Open(Differences.Settle(Both, 2, DifferenceEnd.Explained, Thursday19).Value!).Select(count => count.PotId.Text));
        Assert.Empty(Differences.Open(Closed.Count(Thursday12, "food", 30)));
    }

    // On its day; where that was counted, on the day of that count, so that the count stays as it was.
    [Theory]
    [InlineData(14, 19)]
    [InlineData(19, 19)]
    [InlineData(23, 23)]
    public void Settle_OnADay_IsNotBeforeThePotsLastCount(int day, int settled)
    {
        Book book = Differences.Settle(Both, 1, DifferenceEnd.Explained, new(2026, 3, day)).Value!;

        Assert.Equal((settled, "explained: a note"), (book.Ledger.Movements[^1].Date.Day, book.Ledger.Movements[^1].Reason));
        Assert.Equal(day, book.Weeks.Settled[0].Date.Day);
        Assert.Equal("turned up: a note", Differences.Settle(Both, 1, DifferenceEnd.TurnedUp, new(2026, 3, day)).Value!.Ledger.Movements[^1].Reason);
    }

    // Of each pot in its own wallet.
    [Fact]
    public void Settle_WhatTurnedUp_IsItsPots()
    {
        Book missing = Closed.Count(Thursday12, "fares", new CountEntry(Usd(15)) { Missing = Usd(5), DifferenceName = "coin" });
        Book found = Differences.Settle(missing, 1, DifferenceEnd.TurnedUp, Thursday19).Value!;

        Assert.Equal((Usd(20), missing.Has("cash/wallet:food")), (found.Has("cash/wallet:fares"), found.Has("cash/wallet:food")));
    }

    // What was found and is explained was not spent after all.
    [Fact]
    public void Settle_WhatWasFound_LowersWhatWasSpent()
    {
        Book book = Differences.Settle(Both, 2, DifferenceEnd.Explained, Thursday19).Value!;

        Assert.Equal((Usd(0), Both.Has("outside/spending:fares") - Usd(5)), (book.Has("outside/difference:fares"), book.Has("outside/spending:fares")));
    }

    [Fact]
    public void Settle_OfAPotThatIsGoneOrNoCashAnyMore_CanOnlyBeExplained()
    {
        Book gone = Both with { Household = House with { Pots = House.Pots.RemoveAt(0) } };
        Book account = Both with { Household = House with { Pots = House.Pots.SetItem(0, House.Pots[0] with { Place = Core.Ledgers.Place.Account }) } };

        Assert.Equal(new CountFault.PotGone(), Differences.Settle(gone, 1, DifferenceEnd.TurnedUp, Thursday19).Fault);
        Assert.Equal(new CountFault.PotGone(), Differences.Settle(account, 1, DifferenceEnd.TurnedUp, Thursday19).Fault);
        Assert.True(Differences.Settle(gone, 1, DifferenceEnd.Explained, Thursday19).Ok);
    }

    [Fact]
    public void Reopen_TheLast_LeavesItOpenAgain()
    {
        Book settled = Differences.Settle(Differences.Settle(Both, 2, DifferenceEnd.Explained, Thursday19).Value!, 1, DifferenceEnd.TurnedUp, Thursday19).Value!;
        Book open = Differences.Reopen(settled, Differences.LastSettled(settled)!, Thursday19).Value!;

        Assert.Equal((1L, "not cleared up after all"), (Differences.LastSettled(settled)!.Count, open.Ledger.Movements[^1].Reason));
        Assert.Equal([1L], Differences.Open(open).Select(count => count.Number));
        Assert.Equal((Usd(10), Usd(100)), (open.Has("outside/difference:food"), open.Has("cash/wallet:food")));
        Assert.Equal(2L, Differences.LastSettled(open)!.Count);

        // What turned up was spent since.
        Book spent = settled.Spend("food", 110, new(2026, 3, 20));
        Assert.IsType<Obstacle.GoneOn>(Differences.InTheWay(spent, Differences.LastSettled(spent)!));
        Assert.Null(Differences.InTheWay(settled, Differences.LastSettled(settled)!));
    }
}
