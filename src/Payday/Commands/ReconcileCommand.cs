using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Reconciling;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Fields;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday reconcile</c>: the account held against the bank's.</summary>
internal static class ReconcileCommand
{
    public static Command Build(CommandShell shell)
    {
        var balance = new Option<string?>("--balance") { Description = "The bank's balance at the end of the day.", HelpName = "AMOUNT" };
        Option<LocalDate?> on = OptionValues.Date("--on", "The day of the balance. Default: today.");
        Option<int[]> at = OptionValues.Counts("--at", "A line that the bank shows, by its number.", 1, int.MaxValue, "NUMBER");
        var accept = new Option<bool>("--accept") { Description = "Write it down: what is ticked is at the bank from now on." };
        var name = new Option<string?>("--name") { Description = "What a difference is called that stays, in a few words; it is in view until it is explained.", HelpName = "TEXT" };
        var undo = new Option<bool>("--undo") { Description = "Take back the last reconciliation." };
        var command = new PaydayCommand(
            "reconcile",
            "Compare the account with the bank's balance: the lines that the bank has yet to show, what is on its way, and where to look for a difference.",
            "payday reconcile --balance 1840.20 --at 12 --at 15 --accept") { balance, on, at, accept, name, undo };
        return Invocation.Does(command, shell, call => call.OnBook(call.Parsed.GetValue(accept) || call.Parsed.GetValue(undo), (store, book) =>
        {
            LocalDate today = call.Shell.Today();
            if (call.Parsed.GetValue(undo))
            {
                return Undo(store, book);
            }

            LocalDate date = call.Parsed.GetValue(on) ?? today;
            string? called = call.Parsed.GetValue(name) is { } text ? CleanText.OneLine(text).Trim() : null;
            return date > today ? new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(date)}: {DateTexts.StillToCome}")
                : called is { Length: > EntryInput.LongestWhat } ? new Answer.WrongUse($"--name has {called.Length} characters; shorten it to {EntryInput.LongestWhat}.")
                : called is not null && !call.Parsed.GetValue(accept) ? new Answer.WrongUse("--name names a difference that is accepted; give --accept too.")
                : Run(store, book, new ReconciliationDraft(date, null, []) { Name = called }, call.Parsed.GetValue(balance), call.Parsed.GetValue(at) ?? [], call.Parsed.GetValue(accept));
        }));
    }

    private static Answer Undo(BookStore store, Book book) => ReconciliationUndo.Last(book) switch
    {
        null => Answer.Because("The account was not compared with the bank yet."),
        var last when ReconciliationUndo.InTheWay(book, last) is { } obstacle => UndoOption.Refused(book, obstacle),
        var last => UndoOption.Stored(store, book, ReconciliationUndo.Of(book, last), [("reconciliation", null, last.Date)]),
    };

    private static Answer Run(BookStore store, Book book, ReconciliationDraft empty, string? balance, int[] at, bool accept)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Result<Money> typed = balance is null ? default : Money.Parse(balance, book.Household.Currency, style);
        if (!typed.Ok)
        {
            return new Answer.WrongUse($"--balance: {FaultTexts.Of(typed.Fault, style)}");
        }

        Result<ReconciliationPlan> plan = at.Distinct().Aggregate(
            Result.Of(ReconciliationPlan.Of(book, empty with { Balance = balance is null ? null : typed.Value })), (all, number) => all.Then(one => one.Tick(number)));
        if (!plan.Ok)
        {
            return Answer.Because(plan.Fault, style);
        }

        if (!accept)
        {
            return Shown(plan.Value, stored: false, balance is null
                ? "Give the bank's balance with --balance, and what it shows with --at."
                : plan.Value.Difference is { IsZero: true } ? "It agrees. Write it down with --accept." : "Tick what else the bank shows with --at.");
        }

        Result<Book> after = plan.Value.Accept();
        if (!after.Ok)
        {
            return Answer.Because(after.Fault, style);
        }

        // What was begun on the screen is another one.
        store.Save(book, after.Value with { Weeks = after.Value.Weeks with { Reconciling = book.Weeks.Reconciling } });
        return Shown(plan.Value, stored: true, plan.Value.Difference is { IsZero: true } ? "Agreed and stored." : plan.Value.Name.Length == 0 ? "Stored with its difference, which stays in view." : $"Stored with its difference, \"{plan.Value.Name}\", which stays in view.");
    }

    private static Answer.Done Shown(ReconciliationPlan plan, bool stored, string last)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        string[] culprits = [.. plan.Culprits.Select(culprit => CulpritText.Of(culprit, plan.Book.Household))];
        return new Answer.Done(
            [
                .. Report.Heading("Account against the bank", DateText.Long(plan.Draft.Date)),
                .. plan.Lines.IsEmpty ? ["All lines are at the bank."] : Lines(plan, style),
                "",
                .. Report.Table(
                    style,
                    [Report.Amounts("bank"), Report.Amounts("here"), Report.Amounts("on its way"), Report.Amounts("difference")],
                    [[plan.Draft.Balance?.ToString(style) ?? "?", plan.Here.ToString(style), plan.OnItsWay.ToString(style), plan.Difference?.ToString(style) ?? "?"]]),
                "",
                .. culprits.SelectMany(culprit => Report.Prose("! " + culprit)),
                last,
            ],
            JsonSerializer.Serialize(
                new ReconcileResult(
                    stored,
                    LocalDatePattern.Iso.Format(plan.Draft.Date),
                    plan.Draft.Balance?.ToPlain(),
                    plan.Here.ToPlain(),
                    plan.OnItsWay.ToPlain(),
                    plan.Expected.ToPlain(),
                    plan.Difference?.ToPlain(),
                    plan.Name.Length == 0 ? null : plan.Name,
                    [.. plan.Lines.Select(line => new AccountLineResult(
                        line.Number,
                        LocalDatePattern.Iso.Format(line.Date),
                        AccountLineText.Of(plan.Book.Household, line),
                        line.Amount.ToPlain(),
                        line.Cheque,
                        plan.IsAtBank(line)))],
                    culprits),
                ResultJson.Readable.ReconcileResult));
    }

    private static IEnumerable<string> Lines(ReconciliationPlan plan, NumberStyle style) => Report.Table(
        style,
        [new("", Align.Right), new("date"), Report.Names("line"), Report.Amounts("amount"), new("")],
        plan.Lines.Select(line => ImmutableArray.Create(
            line.Number.ToString(CultureInfo.InvariantCulture),
            DateText.Day(line.Date),
            AccountLineText.Of(plan.Book.Household, line),
            line.Amount.ToString(style),
            plan.IsAtBank(line) ? "at the bank" : "on its way")));
}
