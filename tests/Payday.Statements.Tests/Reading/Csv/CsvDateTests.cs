using NodaTime.Text;
using Payday.Statements.Files;
using Payday.Statements.Reading.Csv;

namespace Payday.Statements.Tests.Reading.Csv;

public sealed class CsvDateTests
{
    [Theory]
    [InlineData("2026-03-05", CsvDateOrder.YearFirst, "2026-03-05")]
    [InlineData("2026/3/5", CsvDateOrder.YearFirst, "2026-03-05")]
    [InlineData("20260305", CsvDateOrder.YearFirst, "2026-03-05")]
    [InlineData("26-03-05", CsvDateOrder.YearFirst, "2026-03-05")]
    [InlineData("2026-03-05T23:30:00-11:00", CsvDateOrder.YearFirst, "2026-03-05")]
    [InlineData("2026-03-05 00:10:00.123Z", CsvDateOrder.YearFirst, "2026-03-05")]
    [InlineData("05.03.2026", CsvDateOrder.DayFirst, "2026-03-05")]
    [InlineData("5. 3. 2026", CsvDateOrder.DayFirst, "2026-03-05")]
    [InlineData("5/3/26", CsvDateOrder.DayFirst, "2026-03-05")]
    [InlineData("05032026", CsvDateOrder.DayFirst, "2026-03-05")]
    [InlineData("05/03/2026", CsvDateOrder.MonthFirst, "2026-05-03")]
    [InlineData("05 Mar 2026", CsvDateOrder.MonthFirst, "2026-03-05")]
    [InlineData("Mar 5, 2026", CsvDateOrder.DayFirst, "2026-03-05")]
    [InlineData("5. M\u00E4rz 2026", CsvDateOrder.DayFirst, "2026-03-05")]
    [InlineData("5-ao\u00FBt-26", CsvDateOrder.DayFirst, "2026-08-05")]
    [InlineData("2026-Mar-05", CsvDateOrder.DayFirst, "2026-03-05")]
    [InlineData("Thu 5 Mar 2026", CsvDateOrder.DayFirst, "2026-03-05")]
    public void Read_AsBanksWriteIt_IsTheDay(string text, CsvDateOrder order, string day) =>
        Assert.Equal(day, LocalDatePattern.Iso.Format(CsvDate.Read(text, order)!.Value));

    [Theory]
    [InlineData("2026-02-30")]
    [InlineData("2026-13-01")]
    [InlineData("05/03")]
    [InlineData("12.50")]
    [InlineData("1.234.567")]
    [InlineData("Order 5 Mar 2026")]
    [InlineData("5 Mar 2026 Mill")]
    [InlineData("2026-03-05-07")]
    [InlineData("1234567890")]
    [InlineData("")]
    public void IsAny_NoDate_IsNone(string text) => Assert.False(CsvDate.IsAny(text));
}
