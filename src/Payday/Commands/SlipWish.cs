using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Pages;
using Payday.Printing;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Which paper is wanted, and where it goes: to a file, to a printer, or else to the screen.</summary>
/// <param name="Filling">The filling sheet rather than the slip.</param>
/// <param name="Columns">How many columns wide, or null for what fits.</param>
/// <param name="File">The PDF file to write, or null.</param>
/// <param name="Size">The name of the PDF's paper size, or null.</param>
/// <param name="Replace">Whether the PDF file may already be there.</param>
/// <param name="Prints">Whether it goes to a printer.</param>
/// <param name="Printer">The name of the printer, or null for the usual one.</param>
/// <param name="Print">How large the print is.</param>
internal sealed record SlipWish(bool Filling, int? Columns, string? File, string? Size, bool Replace, bool Prints, string? Printer, PrintSize Print)
{
    /// <summary>The fewest columns of a paper.</summary>
    public const int NarrowestPaper = 32;

    /// <summary>The most columns of a paper, and those of the screen.</summary>
    public const int WidestPaper = 80;

    private const int PrinterColumns = 42;

    private readonly Result<PaperSize> size = Printing.PaperSize.Parse(Size ?? Printing.PaperSize.A6.Name);

    /// <summary>What doesn't go together, or null.</summary>
    public string? Fault =>
        Prints && File is not null ? "Choose one of --pdf and --print."
        : File is null && (Size is not null || Replace) ? "--paper and --replace go with --pdf."
        : IsLarge && File is null && !Prints ? "--print-size large goes with --pdf or --print."
        : Columns is not null && IsLarge ? "Choose one of --width and --print-size large."
        : !size.Ok ? $"--paper {Size}: {FaultTexts.Of(size.Fault)}"
        : IsLarge && Size is not null && !size.Value.IsSheet ? $"Large print needs a full sheet; leave --paper {size.Value.Name} out."
        : null;

    /// <summary>Whether anything was asked for.</summary>
    public bool IsAny => File is not null || Prints || Columns is not null;

    /// <summary>How many columns wide a paper of text is.</summary>
    public int TextColumns => Columns ?? (Prints ? PrinterColumns : WidestPaper);

    /// <summary>Whether large print is wanted.</summary>
    public bool IsLarge => Print == PrintSize.Large;

    /// <summary>The size of the PDF's pages, only without a <see cref="Fault"/>: unless it is said, pocket size for a slip, and a full sheet for the filling sheet and large print.</summary>
    /// <param name="currency">The household's, which tells the sheets in use where it lives.</param>
    public PaperSize PaperSize(Currency currency) => Size is not null ? size.Value! : Filling ? Printing.PaperSize.SheetFor(currency) : PrintedPaper.SizeOfSlip(currency, Print);
}
