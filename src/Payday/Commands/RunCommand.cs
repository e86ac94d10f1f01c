using System.CommandLine;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday run</c>: the routine without the screen.</summary>
internal static class RunCommand
{
    public static Command Build(CommandShell shell)
    {
        Option<LocalDate?> on = OptionValues.Date("--on", "The payday. Default: the first that is not closed.");
        var accept = new Option<bool>("--accept") { Description = "Take every proposal and close the payday. Without it nothing is stored." };
        var income = new Option<string[]>("--income") { Description = "What really came in from a source, by its name; the last = stands before the amount.", HelpName = "Name=AMOUNT" };
        var oneOff = new Option<string[]>("--one-off") { Description = "What came in once, from nobody on the list.", HelpName = "Name=AMOUNT" };
        var buffer = new Option<string?>("--buffer")
        {
            Description = "What the account's buffer gives to this payday; 0 for nothing.",
            HelpName = "AMOUNT",
        };
        var overdraft = new Option<string?>("--overdraft")
        {
            Description = "What pays off an overdraft, where that is less than what comes in; the bank's terms decide what it costs.",
            HelpName = "AMOUNT",
        };
        var bank = new Option<string?>("--bank")
        {
            Description = "Where the notes come from this time: teller, or a machine's notes and its limit each time, such as '20 50 / 500'; usual for where they usually do.",
            HelpName = "BANK",
        };
        var command = new PaydayCommand(
            "run",
            "Show the payday routine, all proposals taken; with --accept close it.",
            "payday run --income \"Night shifts=1204.55\" --accept") { on, accept, income, oneOff, overdraft, buffer, bank };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) => Run(
            store,
            book,
            call.Parsed.GetValue(on),
            draft =>
            {
                Result<RoutineDraft> told = IncomeInput.Sources(book, draft, call.Parsed.GetValue(income) ?? []);
                told = told.Ok ? IncomeInput.OneOffs(book, told.Value, call.Parsed.GetValue(oneOff) ?? []) : told;
                told = told.Ok ? ToOverdraft(book, told.Value, call.Parsed.GetValue(overdraft)) : told;
                told = told.Ok ? FromBuffer(book, told.Value, call.Parsed.GetValue(buffer)) : told;
                return told.Ok ? FromBank(book.Household.Settings, told.Value, call.Parsed.GetValue(bank)) : told;
            },
            call.Parsed.GetValue(accept))));
    }

    private static Result<RoutineDraft> FromBuffer(Book book, RoutineDraft draft, string? buffer)
    {
        if (buffer is null)
        {
            return Result.Of(draft);
        }

        Result<Money> given = CommandInput.Amount("--buffer", buffer, book.Household.Currency, book.Household.Settings.Numbers);
        return given.Ok ? Result.Of(draft with { FromBuffer = given.Value }) : Result.Refused<RoutineDraft>(given.Fault);
    }

    private static Result<RoutineDraft> ToOverdraft(Book book, RoutineDraft draft, string? overdraft)
    {
        if (overdraft is null)
        {
            return Result.Of(draft);
        }

        NumberStyle style = book.Household.Settings.Numbers;
        Result<Money> paid = CommandInput.Amount("--overdraft", overdraft, book.Household.Currency, style);
        return !paid.Ok ? Result.Refused<RoutineDraft>(paid.Fault)
            : paid.Value > book.Ledger.Balances.Overdrawn ? Result.Refused<RoutineDraft>(new ArgumentFault.OverdraftLess(book.Ledger.Balances.Overdrawn))
            : Result.Of(draft with { ToOverdraft = paid.Value });
    }

    private static Result<RoutineDraft> FromBank(HouseholdSettings settings, RoutineDraft draft, string? bank)
    {
        switch (bank?.Trim().ToUpperInvariant())
        {
            case null:
                return Result.Of(draft);
            case "USUAL":
                return Result.Of(draft with { AsksATeller = false, Machine = null });
            case "TELLER":
                return Result.Of(draft with { AsksATeller = settings.Bank is CashSource.Machine, Machine = null });
            default:
                Result<CashSource.Machine> machine = MachineText.Read(bank, settings.Cash, settings.Numbers);
                return machine.Ok ? Result.Of(draft with { AsksATeller = false, Machine = machine.Value }) : Result.Refused<RoutineDraft>(new ArgumentFault.Of($"--bank {bank}", machine.Fault));
        }
    }

    private static Answer Run(BookStore store, Book book, LocalDate? on, Func<RoutineDraft, Result<RoutineDraft>> tell, bool accept)
    {
        Result<RoutineDraft> draft = Routine.Begun(book, on);
        if (!draft.Ok)
        {
            return Answer.Because(FaultTexts.Of(draft.Fault, book.Household.Settings.Numbers));
        }

        Result<RoutineDraft> told = tell(draft.Value);
        if (!told.Ok)
        {
            return new Answer.WrongUse(FaultTexts.Of(told.Fault, book.Household.Settings.Numbers));
        }

        Result<RoutinePlan> plan = Routine.Plan(book, told.Value);
        return !plan.Ok ? Answer.Because(FaultTexts.Of(plan.Fault, book.Household.Settings.Numbers))
            : accept ? Close(store, plan.Value)
            : Shown(plan.Value, closed: false, Next(plan.Value, hasNews: told.Value != draft.Value));
    }

    private static string Next(RoutinePlan plan, bool hasNews) => (hasNews, Closing.Of(plan)) switch
    {
        (true, { Ok: false, Faults: var faults }) => $"Nothing is stored. It can't be closed like this: {Said(faults, plan)}",
        (false, { Ok: false, Faults: var faults }) => $"It can't be closed yet: {Said(faults, plan)} Correct an income with --income \"Name=AMOUNT\".",
        (true, _) => "Nothing is stored. Close it with the same line and --accept.",
        (false, _) => "Close it with --accept; correct an income with --income \"Name=AMOUNT\".",
    };

    private static string Said(IEnumerable<Fault> faults, RoutinePlan plan) => ClosingTexts.ForCommands(faults, plan.Book.Household.Settings.Numbers);

    private static Answer Close(BookStore store, RoutinePlan plan)
    {
        Result<Book> closed = Closing.Of(plan);
        if (!closed.Ok)
        {
            return new Answer.Refused(
            [
                "This payday can't be closed. " + Said(closed.Faults, plan),
                Cautions.Talk + " Nothing was changed.",
            ]);
        }

        store.Save(plan.Book, closed.Value);
        return Shown(plan, closed: true, "Closed and stored. Print the slip with payday slip.");
    }

    private static Answer.Done Shown(RoutinePlan plan, bool closed, string last) => new(
        [.. RoutineReport.Lines(plan), "", .. Cautions.Routine, Cautions.Cash, "", .. Remarks(plan).SelectMany(Report.Prose), last],
        RoutineJson.Of(plan, closed));

    // What came in beside the list, or a date too far on, would otherwise go by unseen.
    private static IEnumerable<string> Remarks(RoutinePlan plan)
    {
        foreach (string name in plan.Draft.OneOffs.Keys)
        {
            yield return $"! {name} is none of the income sources, so it counts as a one-off on top of them.";
        }

        foreach (PotRow row in plan.Pots.Rows.Where(row => row.Asks))
        {
            yield return $"? {PotQuestion.Of(row, plan.Book.Household.Settings.Numbers)} {PotQuestion.Commands(row, plan.Period.First)}";
        }

        if (Routine.Next(plan.Book) is { Ok: true, Value: var next } && next < plan.Period.First)
        {
            yield return $"! The payday of {DateText.Long(next)} is left out: it can't be closed after this one.";
        }
    }
}
