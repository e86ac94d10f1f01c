using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

/// <summary>Which parts of a cash pot's fill go in the wallet when.</summary>
public class WeekPartTests
{
    // Paid on 6 March and every four weeks: Fridays 6, 13, 20 and 27 March are the fill days.
    private static readonly Household FourWeeks = Bare with
    {
        Sources = [Bare.Sources[0] with { Schedule = new Schedule.EveryWeeks(4, Friday6March) }],
    };

    [Theory]
    [InlineData(FillPer.Week, false, 25, "6 Mar 25, 13 Mar 25, 20 Mar 25, 27 Mar 25")]
    [InlineData(FillPer.Payday, false, 25, "6 Mar 25")]
    [InlineData(FillPer.Month, false, 25, "6 Mar 25")]
    [InlineData(FillPer.MonthSpread, false, 25, "6 Mar 25")]
    [InlineData(FillPer.Payday, true, 25, "6 Mar 10, 13 Mar 5, 20 Mar 5, 27 Mar 5")]
    [InlineData(FillPer.Month, true, 70, "6 Mar 20, 13 Mar 20, 20 Mar 15, 27 Mar 15")]
    public void Plan_CashPot_GoesInTheWalletAsItIsFor(FillPer per, bool splits, decimal amount, string parts) => Assert.Equal(
        parts,
        Parts(FourWeeks, new PotKind.Spending(Usd(amount), per) { SplitsOverWeeks = splits }));

    [Fact]
    public void Plan_FillDayAfterThePayday_GoesInOnTheFirstFillDay() => Assert.Equal(
        "9 Mar 25",
        Parts(FourWeeks with { Settings = FourWeeks.Settings with { FillDay = IsoDayOfWeek.Monday } }, new PotKind.Spending(Usd(25), FillPer.Payday)));

    [Fact]
    public void Plan_SavedInCash_GoesInItsEnvelopeAtOnce() =>
        Assert.Equal("at once 25", Parts(FourWeeks, new PotKind.Reserve(Usd(100), Usd(25))));

    [Fact]
    public void Plan_PartsAndWhatIsKeptBack_AreTheFill() => Gen.Select(
        Gen.Int[0, 30_000], Gen.Enum<FillPer>(), Gen.Bool, Gen.Int[1, 5]).Sample((cents, per, splits, weeks) =>
    {
        Household home = FourWeeks with
        {
            Sources = [FourWeeks.Sources[0] with { Schedule = new Schedule.EveryWeeks(weeks, Friday6March), Expected = Usd(3000) }],
            Pots = [Cash(new PotKind.Spending(Cents(cents), per) { SplitsOverWeeks = splits })],
        };
        RoutinePlan plan = Plan(home);
        Money fill = plan.Pots.Rows.Single().Fill;
        if (fill.IsZero)
        {
            Assert.Empty(plan.Withdrawal.Pots);
            return;
        }

        CashPotRow row = plan.Withdrawal.Pots.Single();
        Assert.Equal(fill, Money.Sum(row.Weeks.Select(week => week.Amount), Dollars) + row.KeptBack);
        Assert.Equal(per == FillPer.Week || splits ? weeks : 1, row.Weeks.Length);
        Assert.All(row.Weeks.Skip(1), week => Assert.True(week.Share <= row.Weeks[0].Share));
    });

    private static string Parts(Household home, PotKind kind) => string.Join(", ", Plan(home with { Pots = [Cash(kind)] }).Withdrawal.Pots.Single().Weeks.Select(week =>
        $"{(week.Week is { } day ? day.ToString("d MMM", System.Globalization.CultureInfo.InvariantCulture) : "at once")} {week.Amount.MinorUnits / 100}"));

    private static Pot Cash(PotKind kind) => CashPot("Fun", 0) with { Kind = kind };

    private static RoutinePlan Plan(Household home) => Routine.Plan(Book.Begin(home), new RoutineDraft(Friday6March)).Value!;
}
