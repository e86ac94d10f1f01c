using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Receiving;
using Payday.Pages;
using Payday.Printing;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Slips;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Papers;

/// <summary>Slip and filling sheet as they print.</summary>
internal sealed class PapersScreen(BookSession session, ClosedPayday payday) : PageScreen
{
    private const int SheetWidth = 78;
    private PrintSize print;

    /// <inheritdoc/>
    public override string Title => print == PrintSize.Large ? "Slip and filling sheet, large print" : "Slip and filling sheet";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(payday.Payday);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.P.WithCtrl, "Ctrl+P", "print", "Print the slip and the filling sheet on the system's usual printer.", Print),
        Letters.Save.Does("PDF", "Save both as PDF files: name.pdf and name-filling.pdf.", () => new Way.Edit(new CellEdit("Save as", $"payday-{payday.Payday:uuuu-MM-dd}.pdf", Save) { Most = CellEdit.Long })),
        PrintKeys.Size(print, to => print = to),
        .. payday == session.Book.LastClosed ? [session.Reopens(this)] : Array.Empty<Binding>(),
    ];

    private Paper Slip => SlipLayout.Lay(BankPapers.Slip(session.Book.Household, payday), SlipLayout.UsualWidth);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) =>
    [
        .. Slip.Lines.Select(line => FrameLine.Of(" " + line)),
        FrameLine.Empty,
        Rule(width),
        FrameLine.Empty,
        .. Sheet(Math.Clamp(width - 2, 32, SheetWidth)).Lines.Select(line => FrameLine.Of(" " + line)),
    ];

    private Paper Sheet(int width) => FillingSheetLayout.Lay(BankPapers.Filling(session.Book, ReceivedNotes.Of(session.Book, payday)), width);

    private PaperSize SheetSize => PaperSize.SheetFor(session.Book.Household.Currency);

    private Way Print()
    {
        var printer = new LinePrinter(Environment.GetEnvironmentVariable("PATH"));
        if (print == PrintSize.Large)
        {
            (PrintedPaper slip, PrintedPaper sheet) = Printed();
            Result<string> first = printer.Print(slip.Pdf, null);
            Result<string> second = first.Ok ? printer.Print(sheet.Pdf, null) : first;
            Tell($"Handed to the printer in large print. {sheet.Lacks ?? slip.Lacks}".TrimEnd(), second.Ok ? null : FaultTexts.Of(second.Fault));
            return Way.Stay;
        }

        Result<string> printed = printer.Print([.. Slip.Lines, "", "", .. Sheet(SheetWidth).Lines], null, ascii: false);
        Tell("Handed to the printer.", printed.Ok ? null : FaultTexts.Of(printed.Fault));
        return Way.Stay;
    }

    private (PrintedPaper Slip, PrintedPaper Sheet) Printed()
    {
        var fonts = MachineFonts.OfSystem();
        return (
            PrintedPaper.Slip(BankPapers.Slip(session.Book.Household, payday), PrintedPaper.SizeOfSlip(session.Book.Household.Currency, print), print, fonts),
            PrintedPaper.Filling(BankPapers.Filling(session.Book, ReceivedNotes.Of(session.Book, payday)), SheetSize, print, fonts));
    }

    // Both or none: a slip alone would send the person off without the sheet for the pots.
    private string? Save(string path)
    {
        (PrintedPaper slip, PrintedPaper sheet) = Printed();
        Result<ImmutableArray<string>> saved = OutputFile.WriteAll(
            session.Folder,
            [(path, slip.Pdf), (Path.ChangeExtension(path, null) + "-filling.pdf", sheet.Pdf)],
            replace: false);
        News = saved.Ok ? $"Saved as {CleanText.OneLine(saved.Value[0])} and {CleanText.OneLine(Path.GetFileName(saved.Value[1]))}. {sheet.Lacks ?? slip.Lacks}".TrimEnd() : "";
        return SavingTexts.Of(saved.Fault, session.Style);
    }
}
