using NodaTime;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Counts;

/// <summary>Which weeks are to be counted, and for which day. The paydays are 6 and 20 March, the weeks begin on Fridays.</summary>
public class CountWeeksTests
{
    private static readonly Book Later = Close(Closed, new(2026, 3, 20));

    // Weeks that are over, by their first day, and the pots to be counted in each.
    [Theory]
    [InlineData(12)]
    [InlineData(13, "6 food fares")]
    [InlineData(19, "6 food fares")]
    [InlineData(20, "6 food fares", "13 food fares")]
    [InlineData(27, "6 food fares", "13 food fares", "20 food fares")]
    public void Open_OnADay_AreTheWeeksThatAreOver(int day, params string[] weeks) => Assert.Equal(weeks, Said(Later, day));

    // Counted down to nothing on the 12th it is not asked for before its next fill; with something left it is from the next day on.
    [Theory]
    [InlineData(0, "6 fares", "13 food fares")]
    [InlineData(5, "6 fares", "13 food fares")]
    public void Open_ACountedPot_IsAskedForFromItsNextDay(int left, params string[] weeks) =>
        Assert.Equal(weeks, Said(Later.Count(new(2026, 3, 12), "food", left), 20));

    // Counted within a week with something left, the rest of that week is still to be counted; with nothing left it isn't.
    [Theory]
    [InlineData(0, "6 fares", "13 food fares")]
    [InlineData(5, "6 food fares", "13 food fares")]
    public void Open_CountedWithinAWeek_IsAskedForWhatIsLeft(int left, params string[] weeks) =>
        Assert.Equal(weeks, Said(Later.Count(new(2026, 3, 10), "food", left), 20));

    // On the last day but one there is a day of that week still to come; on the day of the next fill it was counted with it.
    [Theory]
    [InlineData(11, 5, "6 food fares", "13 food fares")]
    [InlineData(13, 0, "6 fares", "13 fares")]
    [InlineData(13, 5, "6 fares", "13 food fares")]
    public void Open_CountedOnTheEdgeOfAWeek_IsAskedForWhatIsLeft(int day, int left, params string[] weeks) =>
        Assert.Equal(weeks, Said(Later.Count(new(2026, 3, day), "food", left), 20));

    [Fact]
    public void Open_WhereNothingWasEverFilled_AreNone() => Assert.Empty(CountWeeks.Open(Book.Begin(House), new(2026, 3, 27)));

    [Fact]
    public void Open_AWeekWhoseFillWasSkipped_IsNotAskedFor()
    {
        Book skipped = WalletFills.Mark(Closed, new FillKey(Friday6March, Friday6March, new PotId("food")), FillState.Skipped, Friday6March).Value!;

        Assert.Equal(["6 fares", "13 food fares"], Said(skipped, 20));
    }

    // The first that is over and not counted; after one of them was counted the next; else what is in the wallet now.
    [Fact]
    public void Begun_GoesOnWithTheFirstWeekThatIsOver()
    {
        Assert.Equal(new LocalDate(2026, 3, 12), CountWeeks.Begun(Later, new(2026, 3, 27)).Date);
        Assert.Equal(new LocalDate(2026, 3, 19), CountWeeks.Begun(Later, new(2026, 3, 27), after: new(2026, 3, 12)).Date);
        Assert.Equal(new LocalDate(2026, 3, 12), CountWeeks.Begun(Later, new(2026, 3, 27), after: new(2026, 3, 11)).Date);
        Assert.Equal(new LocalDate(2026, 3, 9), CountWeeks.Begun(Closed, new(2026, 3, 9)).Date);
        Assert.Equal(new LocalDate(2026, 3, 5), CountWeeks.Begun(Closed, Friday6March).Date);
        Assert.Equal(Friday6March, CountWeeks.Begun(WalletFills.FillAll(Closed, Friday6March).Value!, Friday6March).Date);

        CountDraft draft = new(new(2026, 3, 10));
        Assert.Same(draft, CountWeeks.Begun(Closed with { Weeks = Closed.Weeks with { Draft = draft } }, new(2026, 3, 20)));
    }

    private static IEnumerable<string> Said(Book book, int day) =>
        CountWeeks.Open(book, new(2026, 3, day)).Select(week => $"{week.Week.Day} {string.Join(' ', week.PotIds)}");
}
