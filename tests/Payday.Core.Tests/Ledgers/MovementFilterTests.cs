using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Ledgers;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Ledgers;

public class MovementFilterTests
{
    private static readonly LocalDate Day = new(2026, 3, 6);
    private static readonly LedgerEnd Unplaced = LedgerEnd.InAccount(Purpose.LeftToPlace);

    // A pot and a bill may have the same id: only the one asked for is shown.
    [Theory]
    [InlineData("account/set-aside:car", typeof(LedgerSubject.OfBill))]
    [InlineData("outside/bill:car", typeof(LedgerSubject.OfBill))]
    [InlineData("account/pot:car", typeof(LedgerSubject.OfPot))]
    [InlineData("cash/pot:car", typeof(LedgerSubject.OfPot))]
    [InlineData("account/kept-back:car", typeof(LedgerSubject.OfPot))]
    [InlineData("cash/owed-back:car", typeof(LedgerSubject.OfPot))]
    [InlineData("outside/spending:car", typeof(LedgerSubject.OfPot))]
    [InlineData("owed/car", typeof(LedgerSubject.OfDebt))]
    [InlineData("outside/interest:car", typeof(LedgerSubject.OfDebt))]
    [InlineData("outside/source:car", typeof(LedgerSubject.OfSource))]
    public void Takes_EitherEnd_IsOfItsListAlone(string end, Type list)
    {
        Movement there = Move(Unplaced, LedgerEnd.FromKey(end));
        Movement back = Move(LedgerEnd.FromKey(end), Unplaced);
        Assert.All(Subjects("car"), other =>
        {
            var filter = new MovementFilter(other);
            Assert.Equal(other.GetType() == list, filter.Takes(there));
            Assert.Equal(other.GetType() == list, filter.Takes(back));
        });
        Assert.All(Subjects("bus"), other => Assert.False(new MovementFilter(other).Takes(there)));
    }

    [Fact]
    public void Takes_Dates_AreOfTheMovement()
    {
        var filter = new MovementFilter(Dates: new DateSpan(Day, Day));
        Assert.True(filter.Takes(Move(Unplaced, LedgerEnd.InAccount(Purpose.Buffer))));
        Assert.False(filter.Takes(Move(Unplaced, LedgerEnd.InAccount(Purpose.Buffer)) with { Date = Day.PlusDays(1) }));
    }

    private static LedgerSubject[] Subjects(string id) =>
        [new LedgerSubject.OfSource(new(id)), new LedgerSubject.OfBill(new(id)), new LedgerSubject.OfDebt(new(id)), new LedgerSubject.OfPot(new(id))];

    private static Movement Move(LedgerEnd from, LedgerEnd to) => new(1, Day, from, to, Usd(1), "test");
}
