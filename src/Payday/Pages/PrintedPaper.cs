using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Drawing;
using Payday.Printing;
using Payday.Reports;
using Payday.Slips;

namespace Payday.Pages;

/// <summary>A paper as a PDF file.</summary>
/// <param name="Pdf">The file.</param>
/// <param name="Pages">How many pages it has.</param>
/// <param name="Lacks">Which signs it can't have here, in a sentence; null where it has all.</param>
internal sealed record PrintedPaper(byte[] Pdf, int Pages, string? Lacks)
{
    /// <summary>The paper of a slip, unless another is wanted: pocket size, or a full sheet for large print.</summary>
    public static PaperSize SizeOfSlip(Currency currency, PrintSize print) => print == PrintSize.Large ? PaperSize.SheetFor(currency) : PaperSize.A6;

    /// <summary>A slip.</summary>
    /// <param name="data">What it says.</param>
    /// <param name="size">The paper; for large print a sheet.</param>
    /// <param name="print">How large the print is.</param>
    /// <param name="fonts">The fonts of the machine.</param>
    /// <param name="columns">As text of so many columns; null for drawn, and as text only where that doesn't fit.</param>
    public static PrintedPaper Slip(SlipData data, PaperSize size, PrintSize print, MachineFonts fonts, int? columns = null)
    {
        ArgumentNullException.ThrowIfNull(data);
        string title = data.Kind == SlipKind.Deposit ? "Deposit" : "Withdrawal";
        return columns is null && SlipPages.Draw(data, size, print) is { } pages
            ? Of(pages, title, fonts)
            : AsText(SlipLayout.Lay(data, Columns(columns, size, print)), title, size, print, fonts);
    }

    /// <summary>A filling sheet, drawn.</summary>
    /// <inheritdoc cref="Slip"/>
    public static PrintedPaper Filling(FillingSheetData data, PaperSize size, PrintSize print, MachineFonts fonts, int? columns = null)
    {
        const string Title = "Filling sheet";
        ArgumentNullException.ThrowIfNull(data);
        return columns is null && FillingPages.Draw(data, size, print) is { } pages
            ? Of(pages, Title, fonts)
            : AsText(FillingSheetLayout.Lay(data, Columns(columns, size, print)), Title, size, print, fonts);
    }

    /// <summary>The report of a month or year, on one page.</summary>
    /// <param name="report">What it says.</param>
    /// <param name="size">A full sheet.</param>
    /// <param name="fonts">The fonts of the machine.</param>
    public static PrintedPaper Report(PeriodReport report, PaperSize size, MachineFonts fonts) => Of([ReportPage.Draw(report, size)], report.Period.Name, fonts);

    /// <summary>Drawn pages.</summary>
    public static PrintedPaper Of(ImmutableArray<DrawnPage> pages, string title, MachineFonts fonts) =>
        new(DrawnPdf.Render(pages, title, fonts), pages.Length, DrawnPdf.Lacks(pages, fonts));

    private static int Columns(int? wanted, PaperSize size, PrintSize print) => wanted ?? (print == PrintSize.Large ? PrintSizes.Columns(size) : size.Columns);

    private static PrintedPaper AsText(Paper paper, string title, PaperSize size, PrintSize print, MachineFonts fonts) =>
        new(PdfPaper.Render(paper, size, title, fonts, print), PdfPaper.PagesOf(paper, size, print), PdfPaper.Lacks(paper, fonts));
}
