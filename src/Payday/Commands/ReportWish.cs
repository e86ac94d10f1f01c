using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Printing;
using Payday.Reports;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Which report is wanted, and where it goes.</summary>
/// <param name="Month">The month as typed, or null.</param>
/// <param name="Year">The year as typed, or null.</param>
/// <param name="File">The PDF file to write, or null for text.</param>
/// <param name="Size">The name of the PDF's paper size, or null.</param>
/// <param name="Replace">Whether the PDF file may already be there.</param>
internal sealed record ReportWish(string? Month, string? Year, string? File, string? Size, bool Replace)
{
    private static readonly YearMonthPattern[] Patterns =
    [
        YearMonthPattern.Iso, YearMonthPattern.CreateWithInvariantCulture("MMM uuuu"), YearMonthPattern.CreateWithInvariantCulture("MMMM uuuu"),
    ];

    private readonly Result<PaperSize> size = Printing.PaperSize.Parse(Size ?? Printing.PaperSize.A4.Name);

    /// <summary>What is wrong with it whatever the book, or null.</summary>
    public string? Fault =>
        Month is not null && Year is not null ? "Choose one of --month and --year."
        : File is null && (Size is not null || Replace) ? "--paper and --replace go with --pdf."
        : !size.Ok ? $"--paper {Size}: {FaultTexts.Of(size.Fault)}"
        : !size.Value.IsSheet ? $"A report needs a full sheet; leave --paper {size.Value.Name} out."
        : Month is not null && ReadMonth is null ? $"--month {Month}: write it like 2026-03 or \"Mar 2026\"."
        : Year is not null && ReadYear is null ? $"--year {Year}: write it like 2026."
        : null;

    private YearMonth? ReadMonth => Patterns.Select(pattern => pattern.Parse(Month!.Trim())).FirstOrDefault(read => read.Success)?.Value;

    private int? ReadYear => int.TryParse(Year, NumberStyles.None, CultureInfo.InvariantCulture, out int year) && year is > 0 and < 9_999 ? year : null;

    /// <summary>The size of the PDF's page; only without a <see cref="Fault"/>.</summary>
    public PaperSize PaperSize(Currency currency) => Size is null ? Printing.PaperSize.SheetFor(currency) : size.Value!;

    /// <summary>The month or year; refused where the household hasn't lived it.</summary>
    public Result<ReportPeriod> Period(Book book, LocalDate today)
    {
        ReportPeriod period = Year is not null ? ReportPeriod.OfYear(ReadYear!.Value, today) : new(Month is null ? today.ToYearMonth() : ReadMonth!.Value, IsYear: false);
        YearMonth begun = book.Household.Start.ToYearMonth();
        return period.Last < begun || period.First > today.ToYearMonth()
            ? Result.Refused<ReportPeriod>(new ArgumentFault.NoPeriod(period.Name, new ReportPeriod(begun, IsYear: false).Name, new ReportPeriod(today.ToYearMonth(), IsYear: false).Name))
            : Result.Of(period);
    }
}
