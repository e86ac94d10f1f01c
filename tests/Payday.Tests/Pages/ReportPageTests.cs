using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Pages;
using Payday.Printing;
using Payday.Reports;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Pages;

/// <summary>The report as a page to pin up, read back from its file.</summary>
public sealed class ReportPageTests
{
    private static readonly MachineFonts NoFonts = new();

    [Theory]
    [InlineData("month", 2027, 4)]
    [InlineData("month-so-far", 2027, 5)]
    [InlineData("first-month", 2026, 3)]
    [InlineData("year", 2027, 0)]
    public void Draw_OfAHouseholdThatHasLived_IsAsRecorded(string golden, int year, int month)
    {
        using var demo = new DemoBook(new LocalDate(2027, 5, 20));
        while (Routine.Next(demo.Session.Book).Value < demo.Session.Today)
        {
            demo.CloseOne();
        }

        ReportPeriod period = month == 0 ? ReportPeriod.OfYear(year, demo.Session.Today) : new ReportPeriod(new YearMonth(year, month), IsYear: false);
        ReadPage page = Read(PeriodReport.Of(demo.Session.Book, period, demo.Session.Today), PaperSize.Letter);

        Assert.Equal((612, 792), page.Size);
        Golden.Equal($"report-{golden}", page.Lines);
    }

    /// <summary>Whatever the household: one page, nothing over anything else, nothing outside the margins, all sums of the period whole.</summary>
    [Fact]
    public void Draw_AnyReport_IsOneCleanPage() => Gen.Select(ReportSamples.Gen500(40), Gen.Bool).Sample(
        (report, isLetter) =>
        {
            ReadPage page = Read(report, isLetter ? PaperSize.Letter : PaperSize.A4);
            string[] words = [.. page.Words];
            Assert.All(
                [report.CameIn.Amount, report.Went.Total.Amount, report.Saved, report.Owed],
                amount => Assert.Contains(amount.ToString(report.Style), words));
            Assert.InRange(page.SmallestType, 5, 12);
        },
        iter: 60);

    [Fact]
    public void Draw_FiveHundredPurposes_TakesTheRestTogether() => ReportSamples.Gen500(500).Where(report => report.Went.Rows.Length > 60 && report.Dues.Length > 60).Sample(
        report =>
        {
            string[] words = [.. Read(report, PaperSize.A4).Words];
            Assert.Contains(words, word => word.EndsWith(" others", StringComparison.Ordinal));
            Assert.Contains(words, word => word.EndsWith(" later", StringComparison.Ordinal));
            Assert.Contains(Money.Sum(report.Dues.Select(due => due.Amount), report.Currency).ToString(report.Style), words);
        },
        iter: 6);

    private static ReadPage Read(PeriodReport report, PaperSize size)
    {
        PrintedPaper printed = PrintedPaper.Report(report, size, NoFonts);
        ReadPage page = Assert.Single(ReadPage.Of(printed.Pdf));
        Assert.Equal(1, printed.Pages);
        page.IsClean(size.Margin);
        Assert.DoesNotContain(page.Words, words => words.Any(char.IsControl));
        return page;
    }
}
