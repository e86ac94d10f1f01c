using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Pages;
using Payday.Printing;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Papers;
using Payday.Screens.Shell;
using Payday.Slips;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Returns;

/// <summary>The slip for a cash return, as it prints.</summary>
internal sealed class DepositScreen(BookSession session, ReturnPlan plan) : PageScreen
{
    private PrintSize print;

    /// <inheritdoc/>
    public override string Title => print == PrintSize.Large ? "Deposit slip, large print" : "Deposit slip";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(session.Today);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Enter, "Enter", "it is there", "The cash is at the bank: write it to the ledger.", Confirm),
        .. plan.SlipNotes.IsEmpty
            ? Array.Empty<Binding>()
            :
            [
                new Binding(Key.P.WithCtrl, "Ctrl+P", "print", "Print the slip on the system's usual printer.", Print),
                Letters.Save.Does("PDF", "Save the slip as a PDF file.", () => new Way.Edit(new CellEdit("Save as", $"deposit-{session.Today:uuuu-MM-dd}.pdf", Save) { Most = CellEdit.Long })),
                PrintKeys.Size(print, to => print = to),
            ],
    ];

    private Paper Slip => SlipLayout.Lay(BankPapers.Deposit(session.Book.Household, session.Today, plan.SlipNotes), SlipLayout.UsualWidth);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) =>
    [
        // Without a note that is known there is no slip to show: it would say that there is nothing to pay in.
        .. plan.SlipNotes.IsEmpty ? [] : Slip.Lines.Select(line => FrameLine.Of(" " + line)),
        FrameLine.Empty,
        FrameLine.Of($" {plan.Total.ToString(session.Style)} goes back to the account once Enter says that it is there.", Ink.Strong),
        .. plan.Unlisted.IsZero
            ? []
            : TextWrap.Lines($"! {(plan.SlipNotes.IsEmpty ? "It" : plan.Unlisted.ToString(session.Style) + " of it")} goes in notes that are not known: pick them in the cash return, or write them on the slip.", width - 2)
                .Select(line => FrameLine.Of(" " + line, Ink.Alert)),
    ];

    private Way Confirm()
    {
        Result<Book> after = plan.Confirm(session.Today);
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        string done = WeekText.Returned(session.Book, after.Value, plan.Total);
        session.Take(after.Value);
        session.Return = ReturnDraft.AsPlanned;
        return new Way.Home(done);
    }

    private Way Print()
    {
        var printer = new LinePrinter(Environment.GetEnvironmentVariable("PATH"));
        Result<string> printed = print == PrintSize.Large ? printer.Print(Printed().Pdf, null) : printer.Print(Slip.Lines, null, ascii: false);
        Tell("Handed to the printer.", printed.Ok ? null : FaultTexts.Of(printed.Fault));
        return Way.Stay;
    }

    private PrintedPaper Printed() => PrintedPaper.Slip(
        BankPapers.Deposit(session.Book.Household, session.Today, plan.SlipNotes),
        PrintedPaper.SizeOfSlip(session.Book.Household.Currency, print),
        print,
        MachineFonts.OfSystem());

    private string? Save(string path)
    {
        PrintedPaper slip = Printed();
        Result<string> saved = OutputFile.Write(session.Folder, path, slip.Pdf, replace: false);
        News = saved.Ok ? $"Saved as {CleanText.OneLine(saved.Value)}. {slip.Lacks}".TrimEnd() : "";
        return SavingTexts.Of(saved.Fault, session.Style);
    }
}
