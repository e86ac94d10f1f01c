using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Pages;
using Payday.Printing;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Papers;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Reviews;

/// <summary>Months and years: where money went as bars, income against outgoings, savings and debts as lines, a year as figures.</summary>
internal sealed class YearScreen(BookSession session) : PageScreen
{
    private YearMonth month = session.Today.ToYearMonth();
    private bool byYear;

    /// <inheritdoc/>
    public override string Title => byYear ? $"Year {month.Year.ToString(CultureInfo.InvariantCulture)}" : MonthsReport.Title(month, session.Today);

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Usual", "the lower median of the whole months before: one of their amounts, and at least half of them had no more."),
        ("In, out", "into and out of the account and cash; moving money between pots is neither."),
        ("By card", "bought with a card that is a debt: counts for its pot on that day, and in All of it when the card is paid."),
        ("Saved", "in pots with a target, ladders, reserves and the buffer."),
        ("To pots", "put in pots, less what was taken from them again for another purpose."),
        ("Spent", "spent from pots, in cash once it is counted, and by card."),
        ("Owed", "what is owed on all debts at the month's end."),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. month > First ? [byYear ? new Binding(Key.CursorLeft, "Left", "before", "The year before.", () => Turn(-12)) : new Binding(Key.CursorLeft, "Left", "before", "The month before.", () => Turn(-1))] : Array.Empty<Binding>(),
        .. month < Last ? [byYear ? new Binding(Key.CursorRight, "Right", "after", "The year after.", () => Turn(12)) : new Binding(Key.CursorRight, "Right", "after", "The month after.", () => Turn(1))] : Array.Empty<Binding>(),
        new(Key.Enter, "Enter", byYear ? "month" : "year", "The month shown, or its whole year.", Switch),
        Letters.Save.Does("PDF", "Save it as a page to pin up: a PDF file.", () => new Way.Edit(new CellEdit("Save as", $"payday-{Shown.Short}.pdf", Save) { Most = CellEdit.Long })),
    ];

    private ReportPeriod Shown => byYear ? ReportPeriod.OfYear(month.Year, session.Today) : new ReportPeriod(month, IsYear: false);

    private YearMonth First => byYear ? new YearMonth(Begun.Year, 12) : Begun;

    private YearMonth Last => byYear ? new YearMonth(session.Today.Year, 1) : session.Today.ToYearMonth();

    private YearMonth Begun => session.Book.Household.Start.ToYearMonth();

    /// <inheritdoc/>
    protected override object Source => (session.Book, session.Today, month, byYear);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        // A year that goes on is shown to this month, one that is over to its end.
        YearMonth end = month.Year == session.Today.Year ? session.Today.ToYearMonth() : new YearMonth(month.Year, 12);
        YearMonth last = byYear ? end : month;
        ImmutableArray<MonthSummary> months = MonthSummary.OfYear(session.Book.Ledger, month.Year, session.Book.Household.Start, session.Today, Roundings.Of(session.Book));
        return months.IsEmpty
            ? [FrameLine.Of(" The household begins later.")]
            :
            [
                .. Part("Where the money went", byYear ? MonthsReport.Year(session.Book, end, width - 2) : MonthsReport.Month(session.Book, month, width - 2)),
                .. Part("Income against outgoings", MonthsReport.InAndOut(session.Book, end, width - 2)),
                .. MonthsReport.Curves(session.Book, last, width - 2).SelectMany(curve => Part(curve.Heading, curve.Lines)),
                .. byYear || month.Month == 1 || month == Begun ? [] : Part($"The year to {month.ToString("MMMM", CultureInfo.InvariantCulture)}", MonthsReport.Year(session.Book, month, width - 2)),
                .. Part("In figures", YearReport.Lines(months, month.Year, session.Book, width - 2)),
                .. TextWrap.Lines("By the dates of the ledger lines; what was undone doesn't count.", width - 2).Select(line => FrameLine.Of(" " + line, Ink.Quiet)),
            ];

        IEnumerable<FrameLine> Part(string heading, IEnumerable<string> lines) =>
            [FrameLine.Headed(width, heading), .. lines.Select(line => FrameLine.Of(" " + line)), FrameLine.Empty];
    }

    private Way Turn(int by)
    {
        YearMonth to = month.PlusMonths(by);
        month = to < Begun ? Begun : to > session.Today.ToYearMonth() ? session.Today.ToYearMonth() : to;
        return Way.Stay;
    }

    private Way Switch()
    {
        byYear = !byYear;
        ToTop();
        return Way.Stay;
    }

    private string? Save(string path)
    {
        PaperSize size = PaperSize.SheetFor(session.Book.Household.Currency);
        PrintedPaper page = PrintedPaper.Report(PeriodReport.Of(session.Book, Shown, session.Today), size, MachineFonts.OfSystem());
        Result<string> saved = OutputFile.Write(session.Folder, path, page.Pdf, replace: false);
        News = saved.Ok ? $"Saved as {CleanText.OneLine(saved.Value)}, {size.Name}. {page.Lacks}".TrimEnd() : "";
        return SavingTexts.Of(saved.Fault, session.Style);
    }
}
