using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Histories;
using Payday.Core.Status;
using Payday.Json;
using Payday.Pages;
using Payday.Printing;
using Payday.Reports;
using Payday.Store.Folders;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday report</c>: a month or a year, as text or as a page to pin up.</summary>
internal static class ReportCommand
{
    public static Command Build(CommandShell shell)
    {
        var month = new Option<string?>("--month") { Description = "A month such as 2026-03 or \"Mar 2026\". Default: this one.", HelpName = "MONTH" };
        var year = new Option<string?>("--year") { Description = "A year, as far as it has gone.", HelpName = "YEAR" };
        var pdf = new Option<string?>("--pdf") { Description = "Write one page to pin up, as a PDF.", HelpName = "FILE" };
        var paper = new Option<string?>("--paper") { Description = "The size of that page: A4 or letter. Default: as is usual with the currency.", HelpName = "SIZE" };
        var replace = new Option<bool>("--replace") { Description = "Replace the PDF file where it is already there." };
        var command = new PaydayCommand(
            "report",
            "Report a month or a year: what came in, where it went, savings, debts, set-asides and the next dues.",
            "payday report --month 2026-03 --pdf march.pdf") { month, year, pdf, paper, replace };
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            var wish = new ReportWish(parsed.GetValue(month), parsed.GetValue(year), parsed.GetValue(pdf), parsed.GetValue(paper), parsed.GetValue(replace));
            return wish.Fault is { } fault
                ? new Answer.WrongUse(fault)
                : call.OnLook(book =>
                {
                    Result<ReportPeriod> period = wish.Period(book, shell.Today());
                    return period.Ok ? Make(call.Folder, book, PeriodReport.Of(book, period.Value, shell.Today()), wish) : Answer.Because(FaultTexts.Of(period.Fault));
                });
        });
    }

    private static Answer Make(StoreFolder own, Book book, PeriodReport report, ReportWish wish)
    {
        if (wish.File is not { } path)
        {
            return new Answer.Done([.. PeriodReportText.Lines(book, report)], JsonSerializer.Serialize(Json(report), ResultJson.Readable.ReportResult));
        }

        PaperSize size = wish.PaperSize(report.Currency);
        PrintedPaper page = PrintedPaper.Report(report, size, MachineFonts.OfSystem());
        Result<string> written = OutputFile.Write(own, path, page.Pdf, wish.Replace);
        if (!written.Ok)
        {
            return Answer.Because(written.Fault is FileThere there ? there.Saying("give another name, or add --replace") : FaultTexts.Of(written.Fault));
        }

        string done = $"Written to {written.Value}, {size.Name}.";
        return new Answer.Done(
            [done, .. page.Lacks is { } lacks ? Report.Prose("! " + lacks) : []],
            JsonSerializer.Serialize(new DoneResult(done), ResultJson.Readable.DoneResult)) { HasChanged = true };
    }

    private static ReportResult Json(PeriodReport report) => new(
        report.Period.Short,
        report.Period.Last == report.Today.ToYearMonth(),
        report.Currency.Code,
        Row(report.CameIn),
        Row(report.Went.Total with { Name = "Went out" }),
        report.Saved.ToPlain(),
        report.Owed.ToPlain(),
        [.. report.Went.Rows.Select(Row)],
        [.. report.Months.Select(month => new ReportMonthResult(
            month.Month.ToString("uuuu-MM", CultureInfo.InvariantCulture),
            month.Flow.CameIn.ToPlain(),
            month.Flow.WentOut.ToPlain(),
            month.Saved.ToPlain(),
            month.Owed.ToPlain()))],
        [.. report.SetAside.Select(line => new ReportSetAsideResult(
            line.Name, line.Has.ToPlain(), line.Next is { } next ? LocalDatePattern.Iso.Format(next.Date) : null, line.Next?.Amount.ToPlain()))],
        [.. report.Dues.Select(due => new ReportDueResult(
            LocalDatePattern.Iso.Format(due.Date), due.Name, due.Kind == DueKind.Bill ? "bill" : "minimum", due.Amount.ToPlain()))]);

    private static ReportRowResult Row(WentRow row) => new(row.Name, row.Amount.ToPlain(), row.Beside?.ToPlain(), row.Months);
}
