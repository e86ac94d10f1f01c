using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>What is set aside for a bill beyond the period may be for several dues of it.</summary>
public class LaterDuesTests
{
    private static readonly Household Weekly = Bare with
    {
        Bills = [Bill("Club", 58, new(2026, 3, 9)) with { Schedule = new Schedule.EveryWeeks(1, new(2026, 3, 9)), Until = new(2026, 4, 6) }],
    };

    [Theory]
    [InlineData(0, "")]
    [InlineData(58, "9 58")]
    [InlineData(58.01, "9 58, 16 58")]
    [InlineData(116, "9 58, 16 58")]
    [InlineData(9999, "9 58, 16 58, 23 58, 30 58, 6 58")]
    public void Of_AnAmount_AreThoseItReachesInto(decimal amount, string dues)
    {
        SetAsideLine line = Line(Weekly) with { NextDue = new(2026, 3, 9), NextAmount = Usd(58) };
        Assert.Equal(dues, string.Join(", ", LaterDues.Of(Plan(Weekly), line, Usd(amount)).Select(due => $"{due.Date.Day} {due.Amount.MinorUnits / 100}")));
    }

    [Fact]
    public void Of_NoKnownDue_AreNone() => Assert.Empty(LaterDues.Of(Plan(Weekly), Line(Weekly) with { NextDue = null }, Usd(100)));

    private static RoutinePlan Plan(Household home) => Routine.Plan(Book.Begin(home), new RoutineDraft(Friday6March)).Value!;

    private static SetAsideLine Line(Household home) => new(home.Bills[0].Id, "Club", Usd(0), Usd(0), null, Usd(0));
}
