using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Bills;
using Payday.Core.Calendar;

namespace Payday.Core.Tests.Bills;

public class DueMatchTests
{
    private static readonly Schedule Monthly = new Schedule.EveryMonths(1, new LocalDate(2026, 1, 10));
    private static readonly Schedule Fortnightly = new Schedule.EveryWeeks(2, new LocalDate(2026, 1, 2));
    private static readonly Schedule Typed = new Schedule.OnDates([new LocalDate(2026, 3, 5)]);

    // Times are scheduled dates, where they were moved with the day behind a slash; what was found is said likewise, or none.
    [Theory]
    [InlineData("2026-03-10 2026-04-10", "2026-03-10", "2026-03-10")]
    [InlineData("2026-03-10 2026-04-10", "2026-03-31", "2026-03-10")] // the same month: the same due
    [InlineData("2026-03-10 2026-04-10", "2026-02-28", "none")]
    [InlineData("2026-03-10 2026-04-10", "2026-03-01 2026-03-10", "none 2026-03-10")] // what is exact goes first
    [InlineData("2026-03-10", "2026-03-09 2026-03-12", "2026-03-10 none")] // each is paired once
    [InlineData("2026-05-10/2026-05-11 2026-05-11", "2026-05-11", "2026-05-11")] // scheduled before moved
    [InlineData("2026-01-31/2026-02-02", "2026-02-02", "2026-01-31")] // moved into the next month
    [InlineData("2026-05-10/2026-05-11 2026-05-20", "2026-05-11 2026-05-20", "2026-05-10 2026-05-20")]
    [InlineData("", "2026-03-10", "none")]
    [InlineData("2026-03-10", "", "")]
    public void Of_ByMonths_PairsWhatIsTheSameDue(string times, string written, string found) => Assert.Equal(found, Found(Monthly, times, written));

    [Theory]
    [InlineData("2026-03-13", "2026-03-13", "2026-03-13")]
    [InlineData("2026-03-13", "2026-03-07", "2026-03-13")] // six of fourteen days: less than half
    [InlineData("2026-03-13", "2026-03-19", "2026-03-13")]
    [InlineData("2026-03-13", "2026-03-06", "none")] // half of them
    [InlineData("2026-03-13", "2026-03-20", "none")]
    public void Of_ByWeeks_PairsWhatIsLessThanHalfAStepAway(string times, string written, string found) => Assert.Equal(found, Found(Fortnightly, times, written));

    [Theory]
    [InlineData("2026-03-05", "2026-03-05", "2026-03-05")]
    [InlineData("2026-03-05", "2026-03-06", "none")]
    public void Of_TypedDates_AreOnlyThemselves(string times, string written, string found) => Assert.Equal(found, Found(Typed, times, written));

    private static string Found(Schedule schedule, string times, string written) => string.Join(
        ' ', DueMatch.Of(schedule, [.. Words(times).Select(Time)], [.. Words(written).Select(Date)]).Select(time => time is { } it ? LocalDatePattern.Iso.Format(it.Scheduled) : "none"));

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static Occurrence Time(string word) => word.Split('/') is [var scheduled, var moved] ? new(Date(scheduled), Date(moved)) : new(Date(word), Date(word));

    private static LocalDate Date(string text) => LocalDatePattern.Iso.Parse(text).Value;
}
