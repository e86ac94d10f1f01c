using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Receiving;
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

    /// <inheritdoc/>
    public override string Title => "Slip and filling sheet";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(payday.Payday);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.P.WithCtrl, "Ctrl+P", "print", "Print the slip and the filling sheet on the system's usual printer.", Print),
        Letters.Save.Does("PDF", "Save both as PDF files: name.pdf and name-filling.pdf.", () => new Way.Edit(new CellEdit("Save as", $"payday-{payday.Payday:uuuu-MM-dd}.pdf", Save) { Most = CellEdit.Long })),
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

    private Paper Sheet(int width) => FillingSheetLayout.Lay(BankPapers.Filling(session.Book.Household, ReceivedNotes.Of(session.Book, payday)), width);

    private Way Print()
    {
        var printer = new LinePrinter(Environment.GetEnvironmentVariable("PATH"));
        Result<string> printed = printer.Print([.. Slip.Lines, "", "", .. Sheet(SheetWidth).Lines], null, ascii: false);
        Message = printed.Ok ? "Handed to the printer." : FaultTexts.Of(printed.Fault);
        return Way.Stay;
    }

    // Both or none: a slip alone would send the person off without the sheet for the pots.
    private string? Save(string path)
    {
        string sheet = Path.ChangeExtension(path, null) + "-filling.pdf";
        var fonts = MachineFonts.OfSystem();
        PaperSize size = PaperSize.SheetFor(session.Book.Household.Currency);
        Paper laid = Sheet(size.Columns);
        Result<ImmutableArray<string>> saved = OutputFile.WriteAll(
            session.Folder,
            [
                (path, PdfPaper.Render(Slip, PaperSize.A6, "Withdrawal", fonts)),
                (sheet, PdfPaper.Render(laid, size, "Filling sheet", fonts)),
            ],
            replace: false);
        string lacks = PdfPaper.Lacks(laid, fonts) ?? PdfPaper.Lacks(Slip, fonts) ?? "";
        Message = saved.Ok ? $"Saved as {CleanText.OneLine(saved.Value[0])} and {CleanText.OneLine(Path.GetFileName(saved.Value[1]))}. {lacks}".TrimEnd() : "";
        return saved.Fault switch
        {
            null => null,
            FileThere there => there.Saying("give another name"),
            { } fault => FaultTexts.Of(fault, session.Style),
        };
    }
}
