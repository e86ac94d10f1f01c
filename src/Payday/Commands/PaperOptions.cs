using System.CommandLine;
using Payday.Printing;

namespace Payday.Commands;

/// <summary>The options that say where a paper goes, the same for each command that has one.</summary>
internal sealed class PaperOptions(string usualSizes)
{
    private readonly Option<int?> width = OptionValues.Count("--width", "Columns of the paper, 32 to 80.", SlipWish.NarrowestPaper, SlipWish.WidestPaper);
    private readonly Option<string?> pdf = new("--pdf") { Description = "Write a PDF instead.", HelpName = "FILE" };
    private readonly Option<string?> paper = new("--paper") { Description = $"The size of the PDF's pages: A6, A4 or letter. Default: {usualSizes}", HelpName = "SIZE" };
    private readonly Option<bool> replace = new("--replace") { Description = "Replace the PDF file where it is already there." };
    private readonly Option<string?> print = new("--print") { Description = "Print on a printer of the system, or on its usual one.", HelpName = "PRINTER", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> size = Sizes();

    /// <summary>Gives them to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[width, pdf, paper, replace, print, size])
        {
            command.Options.Add(option);
        }
    }

    /// <summary>What was asked for.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="filling">Whether it is the filling sheet.</param>
    public SlipWish Wish(ParseResult parsed, bool filling) => new(
        filling,
        parsed.GetValue(width),
        parsed.GetValue(pdf),
        parsed.GetValue(paper),
        parsed.GetValue(replace),
        parsed.GetResult(print) is not null,
        parsed.GetValue(print),
        parsed.GetValue(size) == "large" ? PrintSize.Large : PrintSize.Usual);

    private static Option<string?> Sizes()
    {
        var size = new Option<string?>("--print-size") { Description = "usual or large: large print of 16 points and more, on a full sheet. With --pdf or --print.", HelpName = "SIZE" };
        size.LimitTo("usual", "large");
        return size;
    }
}
