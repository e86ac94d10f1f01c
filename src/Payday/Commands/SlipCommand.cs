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
using Payday.Pages;
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
        var paper = new Option<string?>("--paper") { Description = "The size of the PDF's pages: A6, A4 or letter. Default: A6 for the slip; for the filling sheet and for large print letter or A4, as is usual with the currency.", HelpName = "SIZE" };
        var replace = new Option<bool>("--replace") { Description = "Replace the PDF file where it is already there." };
        var print = new Option<string?>("--print") { Description = "Print on a printer of the system, or on its usual one.", HelpName = "PRINTER", Arity = ArgumentArity.ZeroOrOne };
        var size = new Option<string?>("--print-size") { Description = "usual or large: large print of 16 points and more, on a full sheet. With --pdf or --print.", HelpName = "SIZE" };
        size.LimitTo("usual", "large");
        var command = new PaydayCommand(
            "slip",
            "Show the withdrawal slip, or the filling sheet, as text, as a PDF or on a printer.",
            "payday slip --filling --pdf filling.pdf --paper letter") { on, filling, width, pdf, paper, replace, print, size };
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
                parsed.GetValue(print),
                parsed.GetValue(size) == "large" ? PrintSize.Large : PrintSize.Usual);
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
        string[] still = found.Closed ? [] : ["", "This payday is not closed yet: the figures may still change."];
        if (wish.File is { } file)
        {
            return Written(own, OnPaper(household, found, received, wish), file, wish, household, still);
        }

        if (wish is { Prints: true, IsLarge: true })
        {
            return Printed(OnPaper(household, found, received, wish), wish.Printer, still);
        }

        Paper laid = wish.Filling
            ? FillingSheetLayout.Lay(BankPapers.Filling(household, received), wish.TextColumns)
            : SlipLayout.Lay(BankPapers.Slip(household, found.Payday), wish.TextColumns);
        return wish.Prints
            ? Printed(Printer().Print(laid.Lines, wish.Printer, ascii: false), still)
            : new Answer.Done([.. laid.Lines, .. still], Json(household, found, received));
    }

    private static PrintedPaper OnPaper(Household household, PaydayOnPaper found, ReceivedNotes received, SlipWish wish)
    {
        var fonts = MachineFonts.OfSystem();
        PaperSize size = wish.PaperSize(household.Currency);
        return wish.Filling
            ? PrintedPaper.Filling(BankPapers.Filling(household, received), size, wish.Print, fonts, wish.Columns)
            : PrintedPaper.Slip(BankPapers.Slip(household, found.Payday), size, wish.Print, fonts, wish.Columns);
    }

    private static Answer Written(StoreFolder own, PrintedPaper paper, string path, SlipWish wish, Household household, string[] still)
    {
        Result<string> written = OutputFile.Write(own, path, paper.Pdf, wish.Replace);
        return written.Ok ? Done($"Written to {written.Value}, {wish.PaperSize(household.Currency).Name}{PageCount(paper)}.", [.. Lacks(paper), .. still]) : Answer.Because(
            written.Fault is FileThere there ? there.Saying("give another name, or add --replace") : FaultTexts.Of(written.Fault));
    }

    // Large print is a matter of type, which lines of text have not.
    private static Answer Printed(PrintedPaper paper, string? printer, string[] still) => Printed(Printer().Print(paper.Pdf, printer), [.. Lacks(paper), .. still]);

    private static Answer Printed(Result<string> printed, string[] still) =>
        printed.Ok ? Done($"Handed to the printer. {printed.Value}".TrimEnd(), still) : Answer.Because(printed.Fault);

    private static LinePrinter Printer() => new(Environment.GetEnvironmentVariable("PATH"));

    private static string PageCount(PrintedPaper paper) => paper.Pages > 1 ? $", {paper.Pages} pages" : "";

    private static IEnumerable<string> Lacks(PrintedPaper paper) => paper.Lacks is { } lacks ? Report.Prose("! " + lacks) : [];

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
