using System.CommandLine;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
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
        var accept = new Option<bool>("--accept") { Description = "Close the payday with that and with every other proposal. Without it nothing is closed." };
        var keep = new Option<bool>("--keep") { Description = "Keep what is decided without closing: the full screen and the next run go on with it." };
        var anew = new Option<bool>("--anew") { Description = "Forget what was decided for this payday before, here or on the full screen." };
        Option<string[]> income = Many("--income", "What really came in from a source, by its name; the last = stands before the amount.", "Name=AMOUNT");
        Option<string[]> oneOff = Many("--one-off", "What came in once, from nobody on the list.", "Name=AMOUNT");
        Option<string[]> bill = Many("--bill", "What a bill comes to this time; 0 waives it.", "NAME[@DUE]=AMOUNT");
        Option<string[]> paid = Many("--paid", "That a bill or a debt's minimum has left the account; with a date the due of that day.", "NAME[=DUE]");
        Option<string[]> unpaid = Many("--unpaid", "That it hasn't left the account yet.", "NAME[=DUE]");
        Option<string[]> debt = Many("--debt", "What is paid on a debt's minimum.", "NAME[@DUE]=AMOUNT");
        Option<string[]> pot = Many("--pot", "What goes in a pot.", "NAME=AMOUNT");
        Option<string[]> place = Many("--place", "Where the surplus goes: a debt, a pot, a bill or buffer; NAME=rest for all that is left, none to begin with nothing placed.", "NAME=AMOUNT");
        Option<string[]> notes = Many("--notes", "The notes for a pot, of the week from a fill day where it has several.", "POT[@DAY]=NOTES");
        var setAsides = new Option<string?>("--set-asides")
        {
            Description = "How money is set aside this time: even, or when-due.",
            HelpName = "WAY",
        };
        setAsides.LimitTo("even", "when-due", DecisionInput.Usual);
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
        var teller = new Option<bool>("--teller") { Description = "The notes come from a teller this time." };
        var machine = new Option<string?>("--machine")
        {
            Description = "They come from a machine: with its notes and limit, such as '20 50 / 500', or the household's usual one.",
            HelpName = "MACHINE",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var loose = new Option<string?>("--loose") { Description = "What becomes of the loose notes at home: use, or keep them there.", HelpName = "WAY" };
        loose.LimitTo("use", "keep");
        var payBack = new Option<string?>("--to-pay-back") { Description = "What becomes of the notes that pots have to pay back: bank, or use them for the withdrawal.", HelpName = "WAY" };
        payBack.LimitTo("bank", "use");
        var command = new PaydayCommand(
            "run",
            "Show the payday routine, all proposals taken but what is decided here; with --accept close it. The word usual in the place of an amount or of notes takes the proposal again.",
            "payday run --income \"Night shifts=1204.55\" --bill Electricity=92.40 --accept")
        {
            on, income, oneOff, overdraft, buffer, bill, paid, unpaid, setAsides, debt, pot, place, notes, teller, machine, bank, loose, payBack, keep, anew, accept,
        };
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            string[] banks = [.. Banks()];
            bool accepts = parsed.GetValue(accept);
            bool keeps = parsed.GetValue(keep);
            return banks.Length > 1 ? new Answer.WrongUse("Give one of --teller, --machine and --bank.")
                : accepts && keeps ? new Answer.WrongUse("--keep keeps a payday that isn't closed; give it or --accept, not both.")
                : accepts || keeps ? call.OnBook((store, book) => Run(store, book, parsed.GetValue(on), parsed.GetValue(anew), Decisions(book), accepts))
                : call.OnLook(book => Run(null, book, parsed.GetValue(on), parsed.GetValue(anew), Decisions(book), closes: false));

            IEnumerable<string> Banks()
            {
                if (parsed.GetValue(teller))
                {
                    yield return "teller";
                }

                if (UndoOption.IsGiven(parsed, machine))
                {
                    yield return parsed.GetValue(machine) ?? "machine";
                }

                if (parsed.GetValue(bank) is { } named)
                {
                    yield return named;
                }
            }

            // In the order of the routine: what is decided later is for the figures that come of what is decided before.
            IEnumerable<Func<RoutinePlan, Result<RoutineDraft>>> Decisions(Book book) =>
            [
                plan => IncomeInput.Sources(book, plan.Draft, parsed.GetValue(income) ?? []),
                plan => IncomeInput.OneOffs(book, plan.Draft, parsed.GetValue(oneOff) ?? []),
                plan => ToOverdraft(book, plan.Draft, parsed.GetValue(overdraft)),
                plan => FromBuffer(book, plan.Draft, parsed.GetValue(buffer)),
                .. Each(bill, DecisionInput.Bill),
                .. Each(paid, (plan, text) => DecisionInput.Paid(plan, text, isPaid: true)),
                .. Each(unpaid, (plan, text) => DecisionInput.Paid(plan, text, isPaid: false)),
                plan => Result.Of(parsed.GetValue(setAsides) is not { } way ? plan.Draft
                    : plan.Draft with { SetAsides = way switch { "even" => SetAsideMode.Level, "when-due" => SetAsideMode.AsTheyFall, _ => null } }),
                .. Each(debt, DecisionInput.Debt),
                .. Each(pot, DecisionInput.Pot),
                .. Each(place, DecisionInput.Place),
                plan => FromBank(book.Household.Settings, plan.Draft, banks.FirstOrDefault()),
                plan => Result.Of(parsed.GetValue(loose) is not { } way ? plan.Draft : plan.Draft with { LeavesNotesAtHome = way == "keep" }),
                plan => Result.Of(parsed.GetValue(payBack) is not { } way ? plan.Draft : plan.Draft with { UsesOwedBack = way == "use" }),
                .. Each(notes, DecisionInput.Notes),
            ];

            IEnumerable<Func<RoutinePlan, Result<RoutineDraft>>> Each(Option<string[]> option, Func<RoutinePlan, string, Result<RoutineDraft>> read) =>
                DecisionInput.Once(option.Name, parsed.GetValue(option) ?? [], read);
        });
    }

    private static Option<string[]> Many(string name, string description, string like) => new(name) { Description = description, HelpName = like };

    private static Result<RoutineDraft> FromBuffer(Book book, RoutineDraft draft, string? buffer)
    {
        if (buffer is null or DecisionInput.Usual)
        {
            return Result.Of(buffer is null ? draft : draft with { FromBuffer = null });
        }

        Result<Money> given = CommandInput.Amount("--buffer", buffer, book.Household.Currency, book.Household.Settings.Numbers);
        return given.Ok ? Result.Of(draft with { FromBuffer = given.Value }) : Result.Refused<RoutineDraft>(given.Fault);
    }

    private static Result<RoutineDraft> ToOverdraft(Book book, RoutineDraft draft, string? overdraft)
    {
        if (overdraft is null or DecisionInput.Usual)
        {
            return Result.Of(overdraft is null ? draft : draft with { ToOverdraft = null });
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
            case "MACHINE" when settings.Bank is CashSource.Machine:
                return Result.Of(draft with { AsksATeller = false, Machine = null });
            case "MACHINE":
                return FromBank(settings, draft, MachineText.Usual(settings.Cash, settings.Numbers));
            default:
                Result<CashSource.Machine> machine = MachineText.Read(bank, settings.Cash, settings.Numbers);
                return machine.Ok ? Result.Of(draft with { AsksATeller = false, Machine = machine.Value }) : Result.Refused<RoutineDraft>(new ArgumentFault.Of($"--bank {bank}", machine.Fault));
        }
    }

    private static Answer Run(
        BookStore? store, Book book, LocalDate? on, bool anew, IEnumerable<Func<RoutinePlan, Result<RoutineDraft>>> decisions, bool closes)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Result<RoutineDraft> begun = Routine.Begun(book, on);
        Result<RoutinePlan> plan = begun.Then(draft => Routine.Plan(book, anew ? new RoutineDraft(draft.Payday) : draft));
        if (!plan.Ok)
        {
            return Answer.Because(plan.Fault, style);
        }

        RoutinePlan told = plan.Value;
        var dropped = new List<string>();
        foreach (Func<RoutinePlan, Result<RoutineDraft>> decide in decisions)
        {
            Result<RoutineDraft> decided = decide(told);
            if (!decided.Ok)
            {
                return Answer.Wrong(decided.Fault, style);
            }

            Result<Recomputed> next = decided.Value == told.Draft ? Result.Of(new Recomputed(told, [])) : Recomputed.After(told, decided.Value);
            if (!next.Ok)
            {
                return Answer.Because(next.Fault, style);
            }

            dropped.AddRange(next.Value.Dropped.Select(one => "! " + FaultTexts.Of(one, style)));
            told = next.Value.Plan;
        }

        return store is null ? Shown(told, dropped, closed: false, Next(told, hasNews: told.Draft != begun.Value))
            : closes ? Close(store, told, dropped)
            : Keep(store, told, dropped);
    }

    private static Answer.Done Keep(BookStore store, RoutinePlan plan, IEnumerable<string> dropped)
    {
        store.Save(plan.Book, plan.Book with { Draft = plan.Draft });
        return Shown(plan, dropped, closed: false, "Kept, not closed. Go on with payday run or payday; close it with --accept.");
    }

    private static string Next(RoutinePlan plan, bool hasNews) => (hasNews, Closing.Of(plan)) switch
    {
        (true, { Ok: false, Faults: var faults }) => $"Nothing is stored. It can't be closed like this: {Said(faults, plan)}",
        (false, { Ok: false, Faults: var faults }) => $"It can't be closed yet: {Said(faults, plan)} Correct an income with --income \"Name=AMOUNT\".",
        (true, _) => "Nothing is stored. Close it with the same line and --accept.",
        (false, _) => "Close it with --accept; correct an income with --income \"Name=AMOUNT\".",
    };

    private static string Said(IEnumerable<Fault> faults, RoutinePlan plan) => ClosingTexts.ForCommands(faults, plan.Book.Household.Settings.Numbers);

    private static Answer Close(BookStore store, RoutinePlan plan, IEnumerable<string> dropped)
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
        return Shown(plan, dropped, closed: true, "Closed and stored. Print the slip with payday slip.");
    }

    private static Answer.Done Shown(RoutinePlan plan, IEnumerable<string> dropped, bool closed, string last) => new(
        [.. RoutineReport.Lines(plan), "", .. Cautions.Routine, Cautions.Cash, "", .. dropped.Concat(Remarks(plan)).SelectMany(Report.Prose), last],
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
