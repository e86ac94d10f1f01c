using NodaTime;
using NodaTime.Text;
using Payday.Core.Calendar;
using Payday.Core.Drafts;

namespace Payday.Core.Tests.Drafts;

public class ScheduleNextTests
{
    private static readonly LocalDate Today = new(2026, 11, 28);

    [Theory]
    [InlineData(3, "2026-11-08", "2027-02-08")]
    [InlineData(3, "2026-11-28", "2026-11-28")]
    [InlineData(6, "2020-11-30", "2026-11-30")]
    [InlineData(12, "2026-03-21", "2027-03-21")]
    [InlineData(12, "2030-03-21", "2027-03-21")]
    [InlineData(1, "2026-01-31", "2026-11-30")]
    public void After_EverySoManyMonths_IsTheFirstFromTheDayOn(int months, string anchor, string next) =>
        Assert.Equal(Date(next), ScheduleNext.After(new ScheduleDraft { Kind = ScheduleKind.EveryMonths, Months = months, Anchor = Date(anchor) }, Today));

    [Theory]
    [InlineData("2027-01-06", "2027-04-15", "2027-01-06", "2026-01-06")]
    [InlineData("2026-11-28", "2026-11-28")]
    [InlineData(null, "2026-11-27", "2025-01-01")]
    public void After_Dates_IsTheNextOfThemInAnyOrder(string? next, params string[] dates) =>
        Assert.Equal(next is null ? null : Date(next), ScheduleNext.After(new ScheduleDraft { Kind = ScheduleKind.Dates, Dates = [.. dates.Select(Date)] }, Today));

    [Fact]
    public void After_NothingKnown_IsNone() => Assert.Null(ScheduleNext.After(new ScheduleDraft { Kind = ScheduleKind.EveryMonths }, Today));

    private static LocalDate Date(string text) => LocalDatePattern.Iso.Parse(text).Value;
}
