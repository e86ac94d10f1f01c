using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Receiving;
using Payday.Json;
using Payday.Printing;
using Payday.Reports;
using Payday.Slips;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday slip</c>: the paper for the bank, or the filling sheet.</summary>
internal static class SlipCommand
{
    public static Command Build(CommandShell shell)
    {
        Option<LocalDate?> on = OptionValues.Date("--on", "The payday. Default: the last closed one, else the next.");
        var filling = new Option<bool>("--filling") { Description = "The filling sheet: which notes go in which pot for which week." };
        Option<int?> width = OptionValues.Count("--width", "Columns of the paper, 32 to 80.", SlipWish.NarrowestPaper, SlipWish.WidestPaper);
        var pdf = new Option<string?>("--pdf") { Description = "Write a PDF instead.", HelpName = "FILE" };
        var paper = new Option<string?>("--paper") { Description = "The size of the PDF's pages: A6, A4 or letter. Default: A6 for the slip; for the filling sheet letter or A4, as is usual with the currency.", HelpName = "SIZE" };
        var replace = new Option<bool>("--replace") { Description = "Replace the PDF file where it is already there." };
        var print = new Option<string?>("--print") { Description = "Print on a printer of the system, or on its usual one.", HelpName = "PRINTER", Arity = ArgumentArity.ZeroOrOne };
        var command = new PaydayCommand(
            "slip",
            "Show the withdrawal slip, or the filling sheet, as text, as a PDF or on a printer.",
            "payday slip --filling --pdf filling.pdf --paper letter") { on, filling, width, pdf, paper, replace, print };
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            var wish = new SlipWish(
                parsed.GetValue(filling),
                parsed.GetValue(width),
                parsed.GetValue(pdf),
                parsed.GetValue(paper),
                parsed.GetValue(replace),
                parsed.GetResult(print) is not null,
                parsed.GetValue(print));
            return wish.Fault is { } fault
                ? new Answer.WrongUse(fault)
                : call.OnLook(book =>
                {
                    Result<PaydayOnPaper> found = PaydayOnPaper.Find(book, parsed.GetValue(on));
                    return found.Ok ? Make(call.Folder, book, found.Value, wish) : Answer.Because(found.Fault, book.Household.Settings.Numbers);
                });
        });
    }

    private static Answer Make(StoreFolder own, Book book, PaydayOnPaper found, SlipWish wish)
    {
        Household household = book.Household;
        ReceivedNotes received = ReceivedNotes.Of(book, found.Payday);
        Paper laid = wish.Filling
            ? FillingSheetLayout.Lay(BankPapers.Filling(household, received), wish.PaperColumns(household.Currency))
            : SlipLayout.Lay(BankPapers.Slip(household, found.Payday), wish.PaperColumns(household.Currency));
        string[] still = found.Closed ? [] : ["", "This payday is not closed yet: the figures may still change."];
        return wish.File is { } file ? Written(own, laid, file, wish, wish.PaperSize(household.Currency), still)
            : wish.Prints ? Printed(laid, wish.Printer, still)
            : new Answer.Done([.. laid.Lines, .. still], Json(household, found, received));
    }

    private static Answer Written(StoreFolder own, Paper paper, string path, SlipWish wish, PaperSize size, string[] still)
    {
        var fonts = MachineFonts.OfSystem();
        byte[] pdf = PdfPaper.Render(paper, size, wish.Filling ? "Filling sheet" : "Withdrawal", fonts);
        Result<string> written = OutputFile.Write(own, path, pdf, wish.Replace);
        return written.Ok ? Done($"Written to {written.Value}, {size.Name}.", [.. PdfPaper.Lacks(paper, fonts) is { } lacks ? Report.Prose("! " + lacks) : [], .. still]) : Answer.Because(
            written.Fault is FileThere there ? there.Saying("give another name, or add --replace") : FaultTexts.Of(written.Fault));
    }

    private static Answer Printed(Paper paper, string? printer, string[] still)
    {
        var lines = new LinePrinter(Environment.GetEnvironmentVariable("PATH"));
        Result<string> printed = lines.Print(paper.Lines, printer, ascii: false);
        return printed.Ok ? Done($"Handed to the printer. {printed.Value}".TrimEnd(), still) : Answer.Because(printed.Fault);
    }

    private static Answer.Done Done(string what, string[] still) => new(
        [what, .. still], JsonSerializer.Serialize(new DoneResult(what), ResultJson.Readable.DoneResult)) { HasChanged = true };

    private static string Json(Household household, PaydayOnPaper paper, ReceivedNotes received)
    {
        ClosedPayday payday = paper.Payday;
        Dictionary<PotId, string> names = household.Pots.ToDictionary(pot => pot.Id, pot => pot.Name);
        Money total = Money.Sum(
            payday.Withdraw.Select(note => Money.FromMinorUnits(note.Key, household.Currency) * note.Value), household.Currency);
        return JsonSerializer.Serialize(
            new SlipResult(
                LocalDatePattern.Iso.Format(payday.Payday),
                paper.Closed,
                NoteText.Counts(payday.Withdraw, household.Currency),
                total.ToPlain(),
                [.. received.Payday.Parts.Select(part => new FillingResult(
                    names.GetValueOrDefault(part.PotId, part.PotId.Text),
                    part.Week is { } week ? LocalDatePattern.Iso.Format(week) : null,
                    NoteText.Counts(part.Notes, household.Currency)))],
                received.Payday.KeptBack.ToDictionary(kept => names.GetValueOrDefault(kept.Key, kept.Key.Text), kept => kept.Value.ToPlain()),
                received.Differ ? NoteText.Counts(received.Payday.Withdraw, household.Currency) : null,
                NoteText.Counts(received.Loose, household.Currency),
                [.. BankPapers.Slip(household, payday).Trips.Select(trip => new TripResult(LocalDatePattern.Iso.Format(trip.Date), NoteCounts.Worth(trip.Notes, household.Currency).ToPlain()))]),
            ResultJson.Readable.SlipResult);
    }
}
