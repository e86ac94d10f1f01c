using System.CommandLine;
using Payday.Core.Books;

namespace Payday.Commands;

/// <summary><c>payday show</c>: a look at the book.</summary>
internal static class ShowCommand
{
    public static Command Build(CommandShell shell)
    {
        var what = new Argument<string?>("WHAT")
        {
            HelpName = "WHAT",
            Description = "pots, bills, debts, calendar, year or ledger. Default: an overview.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        what.LimitTo("pots", "bills", "debts", "calendar", "year", "ledger");
        var whole = new Option<bool>("--whole") { Description = "Of the ledger every line, not what was done." };
        var command = new PaydayCommand(
            "show",
            "Show the household: an overview, or one part of it.",
            "payday show pots") { what, whole };
        return Invocation.Does(command, shell, call => call.Parsed.GetValue(what) is { } part
            ? call.OnLook(book => Part(shell, book, part, call.Parsed.GetValue(whole)))
            : Overview(call));
    }

    /// <summary>What is next, whether the money agrees, and what needs doing.</summary>
    public static Answer Overview(Invocation call) =>
        call.OnLook(book => OverviewAnswer.Of(book, call.Shell.Today()));

    private static Answer Part(CommandShell shell, Book book, string part, bool whole) => part switch
    {
        "pots" => ShowAnswers.Pots(book, shell.Today()),
        "bills" => ShowAnswers.Bills(book, shell.Today()),
        "debts" => ShowAnswers.Debts(book, shell.Today()),
        "calendar" => CalendarAnswer.Of(book, shell.Today()),
        "year" => ShowAnswers.Year(book, shell.Today()),
        _ => ShowAnswers.Ledger(book, whole),
    };
}
