using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Fills;

/// <summary>What should be in a wallet by a day is taken as being there.</summary>
public class TakeUpTests
{
    // The first week's 60 from its day on, both from the second's on.
    [Theory]
    [InlineData(5, 0, 0)]
    [InlineData(6, 60, 1)]
    [InlineData(12, 60, 1)]
    [InlineData(13, 120, 2)]
    public void TakeUp_ByADay_HasTheFillsUpToIt(int day, int wallet, int fills)
    {
        (Book book, TakenUp taken) = TakeUp(Closed, "food", new(2026, 3, day));

        Assert.Equal((Usd(wallet), Usd(120 - wallet)), (book.Has("cash/wallet:food"), book.Has("cash/pot:food")));
        Assert.Equal((fills, fills), (taken.Fills.Length, book.Weeks.Fills.Length));
        Assert.Equal(book.Ledger.Movements.Skip(Closed.Ledger.Movements.Count).Select(movement => movement.Number), taken.Movements);
        Assert.All(taken.Movements, number => Assert.Equal("week's fill", book.Ledger.Movements[(int)number - 1].Reason));
    }

    // A count writes those of several pots one behind the other, each worked out for the book as it was before.
    [Fact]
    public void From_AnotherNumber_IsWhatAnotherPotsWouldBeWrittenBefore()
    {
        (Book fares, TakenUp before) = TakeUp(Closed, "fares", Friday13March);
        ToTakeUp late = ToTakeUp.Of(fares, House.Pots[0], Friday13March);
        ToTakeUp moved = ToTakeUp.Of(Closed, House.Pots[0], Friday13March).From(Closed.Ledger.Movements.Count + before.Movements.Length + 1);

        Assert.NotEmpty(late.Movements);
        Assert.Equal(late.Movements, moved.Movements);
        Assert.Equal(late.Fills, moved.Fills);
        Assert.Equal((late.Taken.Fills, late.Taken.Movements), (moved.Taken.Fills, moved.Taken.Movements), (one, other) => one.Fills.SequenceEqual(other.Fills) && one.Movements.SequenceEqual(other.Movements));
    }

    // 7 were in the envelope at first and are part of no fill.
    [Fact]
    public void TakeUp_WhatIsPartOfNoFill_IsInTheWalletToo()
    {
        Book closed = Close(Book.Begin(House with { Opening = House.Opening with { Pots = PotSums(("food", 7)) } }), Friday6March);
        (Book book, TakenUp taken) = TakeUp(closed, "food", Friday6March);

        Assert.Equal((Usd(67), Usd(60)), (book.Has("cash/wallet:food"), book.Has("cash/pot:food")));
        Assert.Equal(["week's fill", "in the wallet"], taken.Movements.Select(number => book.Ledger.Movements[(int)number - 1].Reason));
    }

    // Food is saved from now on: what it had in the wallet lies in its envelope.
    [Fact]
    public void TakeUp_APotThatIsNotSpentFromTheWalletAnyMore_HasItAllAtHome()
    {
        Book filled = WalletFills.FillAll(Closed, Friday6March).Value!;
        Book saved = filled with { Household = House with { Pots = House.Pots.SetItem(0, House.Pots[0] with { Kind = new PotKind.Reserve(Usd(500), Usd(5)) }) } };
        (Book book, TakenUp taken) = TakeUp(saved, "food", Friday13March);

        Assert.Equal((Usd(0), Usd(120)), (book.Has("cash/wallet:food"), book.Has("cash/pot:food")));
        Assert.Equal("no longer spent from the wallet", book.Ledger.Movements[(int)Assert.Single(taken.Movements) - 1].Reason);
    }

    [Fact]
    public void Spend_OfAPotThatIsSaved_IsOutOfItsEnvelope() =>
        Assert.Equal((Usd(20), Usd(0), Usd(10)), Closed.Spend("boots", 10, Friday13March) is var book ? (book.Has("cash/pot:boots"), book.Has("cash/wallet:boots"), book.Has("cash/owed-back:boots")) : default);

    // A week that was counted stays as it was, and before the payday no cash was there.
    [Theory]
    [InlineData(5, false, 6)]
    [InlineData(8, false, 8)]
    [InlineData(8, true, 12)]
    [InlineData(12, true, 12)]
    [InlineData(14, true, 14)]
    public void Spend_OnADay_TakesTheCashOnTheFirstItCanHaveLeft(int day, bool isCounted, int left)
    {
        Book closed = Close(Book.Begin(House with { Start = new(2026, 3, 1) }), Friday6March);
        Book book = (isCounted ? closed.Count(new(2026, 3, 12), "food", 40) : closed).Spend("food", 10, new(2026, 3, day));

        Assert.Equal(left, book.Ledger.Movements.Last(movement => movement.To == Core.Ledgers.LedgerEnd.FromKey("cash/owed-back:food")).Date.Day);
    }

    private static (Book Book, TakenUp Taken) TakeUp(Book book, string pot, LocalDate date)
    {
        var writer = new WeekWriter(book);
        TakenUp taken = WalletFills.TakeUp(writer, book.Household.Pots.Single(one => one.Id == new PotId(pot)), date);
        return (writer.Book, taken);
    }
}
