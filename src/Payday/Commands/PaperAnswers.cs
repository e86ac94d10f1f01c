using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Json;
using Payday.Pages;
using Payday.Printing;
using Payday.Reports;
using Payday.Slips;
using Payday.Store.Folders;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Where a paper goes: to a file, to a printer, or else it is shown.</summary>
/// <param name="Wish">What was asked for, without a fault.</param>
/// <param name="Own">The data folder, in which no paper is written.</param>
/// <param name="Currency">The household's.</param>
internal sealed record PaperAnswers(SlipWish Wish, StoreFolder Own, Currency Currency)
{
    /// <summary>Lays the paper out and gives it where it is to go.</summary>
    /// <param name="drawn">The paper as pages of a size.</param>
    /// <param name="laid">The paper as text of so many columns.</param>
    /// <param name="still">Lines that are said after it.</param>
    /// <param name="json">The answer in JSON where the paper is shown.</param>
    public Answer Of(Func<PaperSize, MachineFonts, PrintedPaper> drawn, Func<int, Paper> laid, string[] still, Func<string> json) =>
        Wish.File is { } file ? Written(drawn(Size, MachineFonts.OfSystem()), file, still)
        : Wish is { Prints: true, IsLarge: true } ? Printed(drawn(Size, MachineFonts.OfSystem()), still)
        : Wish.Prints ? Printed(Printer().Print(laid(Wish.TextColumns).Lines, Wish.Printer, ascii: false), still)
        : new Answer.Done([.. laid(Wish.TextColumns).Lines, .. still], json());

    private PaperSize Size => Wish.PaperSize(Currency);

    private Answer Written(PrintedPaper paper, string path, string[] still)
    {
        Result<string> written = OutputFile.Write(Own, path, paper.Pdf, Wish.Replace);
        return written.Ok ? Done($"Written to {written.Value}, {Size.Name}{PageCount(paper)}.", [.. Lacks(paper), .. still]) : Answer.Because(
            written.Fault is FileThere there ? there.Saying("give another name, or add --replace") : FaultTexts.Of(written.Fault));
    }

    // Large print is a matter of type, which lines of text have not.
    private Answer Printed(PrintedPaper paper, string[] still) => Printed(Printer().Print(paper.Pdf, Wish.Printer), [.. Lacks(paper), .. still]);

    private static Answer Printed(Result<string> printed, string[] still) =>
        printed.Ok ? Done($"Handed to the printer. {printed.Value}".TrimEnd(), still) : Answer.Because(printed.Fault);

    private static LinePrinter Printer() => new(Environment.GetEnvironmentVariable("PATH"));

    private static string PageCount(PrintedPaper paper) => paper.Pages > 1 ? $", {paper.Pages} pages" : "";

    private static IEnumerable<string> Lacks(PrintedPaper paper) => paper.Lacks is { } lacks ? Report.Prose("! " + lacks) : [];

    private static Answer.Done Done(string what, string[] still) => new(
        [what, .. still], JsonSerializer.Serialize(new DoneResult(what), ResultJson.Readable.DoneResult)) { HasChanged = true };
}
