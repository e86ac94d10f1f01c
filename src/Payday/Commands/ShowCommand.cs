using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Books;
using Payday.Text;

namespace Payday.Commands;

/// <summary><c>payday show</c>: a look at the book.</summary>
internal static class ShowCommand
{
    public static Command Build(CommandShell shell)
    {
        var what = new Argument<string?>("WHAT")
        {
            HelpName = "WHAT",
            Description = "pots, bills, debts, calendar, months, year or ledger. Default: an overview.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        what.LimitTo("pots", "bills", "debts", "calendar", "months", "year", "ledger");
        var whole = new Option<bool>("--whole") { Description = "Of the ledger every line, not what was done." };
        var month = new Option<string?>("--month") { Description = "Of months the last one that is shown, e.g. 2026-04. Default: this one.", HelpName = "MONTH" };
        month.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var text }] && !YearMonthPattern.Iso.Parse(text).Success)
            {
                result.AddError($"--month {CleanText.OneLine(text)}: write a month as 2026-04.");
            }
        });
        var about = new Option<string?>("--about") { Description = "Of the ledger only lines about a pot, bill, debt or income source.", HelpName = "NAME" };
        var dates = new Option<string?>("--dates") { Description = "Of the ledger only lines of a day, a month, a year, or from one to another: 2026-03, \"2026-03-06 to 2026-03-19\".", HelpName = "DATES" };
        var command = new PaydayCommand(
            "show",
            "Show the household: an overview, or one part of it.",
            "payday show pots") { what, whole, about, dates, month };
        return Invocation.Does(command, shell, call => call.Parsed.GetValue(what) switch
        {
            not "ledger" when call.Parsed.GetValue(whole) || call.Parsed.GetValue(about) is not null || call.Parsed.GetValue(dates) is not null =>
                new Answer.WrongUse("--whole, --about and --dates are of the ledger: payday show ledger."),
            "ledger" => call.OnLook(book => ShowAnswers.Ledger(book, call.Parsed.GetValue(whole), call.Parsed.GetValue(about), call.Parsed.GetValue(dates))),
            { } part => call.OnLook(book => Part(shell, book, part, call.Parsed.GetValue(month))),
            null => Overview(call),
        });
    }

    /// <summary>What is next, whether the money agrees, and what needs doing.</summary>
    public static Answer Overview(Invocation call) =>
        call.OnLook(book => OverviewAnswer.Of(book, call.Shell.Today()));

    private static Answer Part(CommandShell shell, Book book, string part, string? month) => part switch
    {
        "pots" => ShowAnswers.Pots(book, shell.Today()),
        "bills" => ShowAnswers.Bills(book, shell.Today()),
        "debts" => ShowAnswers.Debts(book, shell.Today()),
        "calendar" => CalendarAnswer.Of(book, shell.Today()),
        "months" => ShowAnswers.Months(book, month is null ? shell.Today().ToYearMonth() : YearMonthPattern.Iso.Parse(month).Value, shell.Today()),
        _ => ShowAnswers.Year(book, shell.Today()),
    };
}
