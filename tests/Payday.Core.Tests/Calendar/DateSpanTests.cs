using Payday.Core.Calendar;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;

namespace Payday.Core.Tests.Calendar;

public class DateSpanTests
{
    [Theory]
    [InlineData("2026-03-06", "2026-03-06", "2026-03-06")]
    [InlineData(" 2026-02 ", "2026-02-01", "2026-02-28")]
    [InlineData("2028", "2028-01-01", "2028-12-31")]
    [InlineData("2026-03 to 2026-04-10", "2026-03-01", "2026-04-10")]
    [InlineData("2025 to 2026-01", "2025-01-01", "2026-01-31")]
    [InlineData("6 Mar 2026 to 2026-03-09", "2026-03-06", "2026-03-09")]
    [InlineData("feb 2026", "2026-02-01", "2026-02-28")]
    [InlineData("March 2026 to May 2026", "2026-03-01", "2026-05-31")]
    public void Parse_DaysMonthsAndYears_AreTaken(string text, string first, string last)
    {
        DateSpan span = DateSpan.Parse(text).Value;
        Assert.Equal((first, last), (Iso(span.First), Iso(span.Last)));
        Assert.True(span.Has(span.First) && span.Has(span.Last));
        Assert.False(span.Has(span.First.PlusDays(-1)) || span.Has(span.Last.PlusDays(1)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("March")]
    [InlineData("2026-13")]
    [InlineData("26")]
    [InlineData("2026 to 2027 to 2028")]
    [InlineData("2026-03-06 to")]
    [InlineData("\u001b[2J")]
    public void Parse_AnythingElse_SaysHowToWriteIt(string text) =>
        Assert.Equal(
            "Write a day like 2026-03-06, a month like 2026-03 or Mar 2026, a year, or two of these with 'to' between.", DateSpan.Parse(text).Fault.Said());

    [Theory]
    [InlineData("2026-02-30", "February 2026 has 28 days.")]
    [InlineData("6 Mar to 9 Mar 2026", "Which year? Write it like 6 Mar 2026.")]
    public void Parse_ADayThatIsNone_SaysWhatIsWrongWithIt(string text, string fault) => Assert.Equal(fault, DateSpan.Parse(text).Fault.Said());

    [Fact]
    public void Parse_TurnedRound_IsRefused() =>
        Assert.Equal("The second date is before the first; turn them round.", DateSpan.Parse("2026-04 to 2026-03").Fault.Said());

    private static string Iso(NodaTime.LocalDate date) => NodaTime.Text.LocalDatePattern.Iso.Format(date);
}
