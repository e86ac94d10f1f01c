using NodaTime;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Fills;

/// <summary>The parts of paydays that go into the wallet, in their order and with what is there for them.</summary>
public class FillPartTests
{
    private static readonly FillKey First = new(Friday6March, Friday6March, new PotId("food"));
    private static readonly FillKey Second = new(Friday6March, Friday13March, new PotId("food"));

    private static readonly Pot Food = House.Pots[0];

    [Fact]
    public void NotDoneAndDone_AreByDayThenByPot()
    {
        string[] all = ["food 6", "fares 6", "food 13", "fares 13"];
        Assert.Equal(all, FillPart.NotDone(Closed).Select(Said));
        Assert.Empty(FillPart.Done(Closed));

        Book second = WalletFills.FillAll(Closed, Friday13March).Value!;
        Assert.Equal(all[..2], FillPart.NotDone(second).Select(Said));
        Assert.Equal(all[2..], FillPart.Done(second).Select(Said));
        Assert.Equal(all, FillPart.Done(WalletFills.FillAll(second, Friday6March).Value!).Select(Said));
    }

    // The period of 6 March ends on the 19th.
    [Theory]
    [InlineData(null, 2)]
    [InlineData(6, 2)]
    [InlineData(18, 2)]
    [InlineData(19, 0)]
    public void Beyond_ADay_AreThoseOfPeriodsThatGoOn(int? day, int parts) =>
        Assert.Equal(parts, FillPart.Beyond(Closed, Food, day is { } last ? new LocalDate(2026, 3, last) : null).Length);

    // 50 of the 120 at home were bought by card: the week that waits has its 60, and the one that was skipped what is left.
    [Fact]
    public void Moves_OfASkippedFill_IsWhatThoseThatWaitLeave()
    {
        Book book = WalletFills.Mark(Closed, First, FillState.Skipped, Friday6March).Value!.Spend("food", 50, new(2026, 3, 8));

        Assert.Equal([(First, Usd(10)), (Second, Usd(60))], FillPart.Of(book).Where(part => part.Pot.Id == Food.Id).Select(part => (part.Key, part.Moves)));
    }

    private static string Said(FillPart part) => $"{part.Pot.Id} {part.Key.Day.Day}";
}
