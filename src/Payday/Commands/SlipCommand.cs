using System.CommandLine;
using System.Text.Json;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Json;
using Payday.Printing;
using Payday.Reports;
using Payday.Slips;

namespace Payday.Commands;

/// <summary><c>payday slip</c>: the paper for the teller, or the filling sheet.</summary>
internal static class SlipCommand
{
    private const int NarrowestPaper = 32;
    private const int WidestPaper = 80;

    public static Command Build(CommandShell shell)
    {
        var on = new Option<string?>("--on") { Description = "The payday. Default: the last closed one, else the next.", HelpName = "DATE" };
        var filling = new Option<bool>("--filling") { Description = "The filling sheet: which notes go in which pot for which week." };
        var width = new Option<string?>("--width") { Description = "Columns of the paper, 32 to 80.", HelpName = "N" };
        var pdf = new Option<string?>("--pdf") { Description = "Write a PDF instead.", HelpName = "FILE" };
        var paper = new Option<string>("--paper") { Description = "The size of the PDF's pages: A6, A4 or letter.", HelpName = "SIZE", DefaultValueFactory = _ => "A6" };
        var replace = new Option<bool>("--replace") { Description = "Replace the PDF file where it is already there." };
        var print = new Option<string?>("--print") { Description = "Print on a printer of the system, or on its usual one.", HelpName = "PRINTER", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("slip", CommandTree.Help(
            "Show the withdrawal slip, or the filling sheet, as text, as a PDF or on a printer.",
            "payday slip --filling --pdf filling.pdf --paper letter")) { on, filling, width, pdf, paper, replace, print };
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            bool prints = parsed.GetResult(print) is not null;
            if (prints && parsed.GetValue(pdf) is not null)
            {
                return new Answer.WrongUse("Choose one of --pdf and --print.");
            }

            Read<PaperSize> size = PaperSize.Parse(parsed.GetValue(paper));
            Read<int> columns = parsed.GetValue(width) is { } text
                ? CommandInput.Count("--width", text, NarrowestPaper, WidestPaper)
                : Read.Of(parsed.GetValue(pdf) is not null && size.Ok ? size.Value.Columns : prints ? 42 : WidestPaper);
            if ((size.Fault ?? columns.Fault) is { } fault)
            {
                return Answer.Because(fault);
            }

            return call.OnBook((_, book) =>
            {
                Read<PaydayOnPaper> found = PaydayOnPaper.Find(book, parsed.GetValue(on));
                if (!found.Ok)
                {
                    return Answer.Because(found.Fault);
                }

                Paper laid = parsed.GetValue(filling)
                    ? FillingSheetLayout.Lay(BankPapers.Filling(book.Household, found.Value.Payday), columns.Value)
                    : SlipLayout.Lay(BankPapers.Slip(book.Household, found.Value.Payday), columns.Value);
                string title = parsed.GetValue(filling) ? "Filling sheet" : "Withdrawal";
                return parsed.GetValue(pdf) is { } path ? Written(laid, path, size.Value!, title, parsed.GetValue(replace))
                    : prints ? Printed(laid, parsed.GetValue(print))
                    : new Answer.Done(
                        [.. laid.Lines, .. found.Value.Closed ? Array.Empty<string>() : ["", "This payday is not closed yet: the figures may still change."]],
                        Json(book.Household, found.Value));
            });
        });
    }

    private static Answer Written(Paper paper, string path, PaperSize size, string title, bool replace)
    {
        Read<string> written = OutputFile.Write(path, PdfPaper.Render(paper, size, title), replace);
        return written.Ok ? Done($"Written to {written.Value}, {size.Name}.") : Answer.Because(
            written.Fault.Replace("say that it may be replaced", "add --replace", StringComparison.Ordinal));
    }

    private static Answer Printed(Paper paper, string? printer)
    {
        var lines = new LinePrinter(Environment.GetEnvironmentVariable("PATH"));
        Read<string> printed = lines.Print(paper.Lines, printer, ascii: false);
        return printed.Ok ? Done($"Handed to the printer. {printed.Value}".TrimEnd()) : Answer.Because(printed.Fault);
    }

    private static Answer.Done Done(string what) => new(
        [what], JsonSerializer.Serialize(new DoneResult(what), ResultJson.Default.DoneResult));

    private static string Json(Household household, PaydayOnPaper paper)
    {
        ClosedPayday payday = paper.Payday;
        Dictionary<string, string> names = household.Pots.ToDictionary(pot => pot.Id, pot => pot.Name);
        Money total = Money.Sum(
            payday.Withdraw.Select(note => Money.FromMinorUnits(note.Key, household.Currency) * note.Value), household.Currency);
        return JsonSerializer.Serialize(
            new SlipResult(
                LocalDatePattern.Iso.Format(payday.Payday),
                paper.Closed,
                NoteText.Counts(payday.Withdraw, household.Currency),
                total.ToPlain(),
                [.. payday.Parts.Select(part => new FillingResult(
                    names.GetValueOrDefault(part.PotId, part.PotId),
                    part.Week is { } week ? LocalDatePattern.Iso.Format(week) : null,
                    NoteText.Counts(part.Notes, household.Currency)))],
                payday.KeptBack.ToDictionary(kept => names.GetValueOrDefault(kept.Key, kept.Key), kept => kept.Value.ToPlain())),
            ResultJson.Default.SlipResult);
    }
}
