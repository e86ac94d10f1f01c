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
    [InlineData("account/set-aside:car", SubjectKind.Bill)]
    [InlineData("outside/bill:car", SubjectKind.Bill)]
    [InlineData("account/pot:car", SubjectKind.Pot)]
    [InlineData("cash/pot:car", SubjectKind.Pot)]
    [InlineData("account/kept-back:car", SubjectKind.Pot)]
    [InlineData("cash/owed-back:car", SubjectKind.Pot)]
    [InlineData("outside/spending:car", SubjectKind.Pot)]
    [InlineData("owed/car", SubjectKind.Debt)]
    [InlineData("outside/interest:car", SubjectKind.Debt)]
    [InlineData("outside/source:car", SubjectKind.Source)]
    public void Takes_EitherEnd_IsOfItsListAlone(string end, SubjectKind kind)
    {
        Movement there = Move(Unplaced, LedgerEnd.FromKey(end));
        Movement back = Move(LedgerEnd.FromKey(end), Unplaced);
        Assert.All(Enum.GetValues<SubjectKind>(), other =>
        {
            var filter = new MovementFilter(new LedgerSubject(other, "car"));
            Assert.Equal(other == kind, filter.Takes(there));
            Assert.Equal(other == kind, filter.Takes(back));
        });
        Assert.False(new MovementFilter(new LedgerSubject(kind, "bus")).Takes(there));
    }

    [Fact]
    public void Takes_Dates_AreOfTheMovement()
    {
        var filter = new MovementFilter(Dates: new DateSpan(Day, Day));
        Assert.True(filter.Takes(Move(Unplaced, LedgerEnd.InAccount(Purpose.Buffer))));
        Assert.False(filter.Takes(Move(Unplaced, LedgerEnd.InAccount(Purpose.Buffer)) with { Date = Day.PlusDays(1) }));
    }

    private static Movement Move(LedgerEnd from, LedgerEnd to) => new(1, Day, from, to, Usd(1), "test");
}
