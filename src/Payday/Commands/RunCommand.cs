using System.CommandLine;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Store;
using Payday.Text;

namespace Payday.Commands;

/// <summary><c>payday run</c>: the routine without the screen.</summary>
internal static class RunCommand
{
    public static Command Build(CommandShell shell)
    {
        Option<LocalDate?> on = OptionValues.Date("--on", "The payday. Default: the first that is not closed.");
        var accept = new Option<bool>("--accept") { Description = "Take every proposal and close the payday." };
        var income = new Option<string[]>("--income")
        {
            Description = "What really came in; a name that is no source is a one-off. It is kept for the next run.",
            HelpName = "Name=AMOUNT",
        };
        var buffer = new Option<string?>("--buffer")
        {
            Description = "What the account's buffer gives to a payday that falls short; 0 for nothing.",
            HelpName = "AMOUNT",
        };
        var command = new PaydayCommand(
            "run",
            "Show the payday routine, all proposals taken; with --accept close it.",
            "payday run --income \"Night shifts=1204.55\" --accept") { on, accept, income, buffer };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) => Run(
            store, book, call.Parsed.GetValue(on), call.Parsed.GetValue(income) ?? [], call.Parsed.GetValue(buffer), call.Parsed.GetValue(accept))));
    }

    private static Answer Run(BookStore store, Book book, LocalDate? on, string[] incomes, string? buffer, bool accept)
    {
        Read<RoutineDraft> draft = Routine.Begun(book, on);
        if (!draft.Ok)
        {
            return Answer.Because(draft.Fault);
        }

        Read<RoutineDraft> told = IncomeInput.Apply(book, draft.Value, incomes);
        if (!told.Ok)
        {
            return new Answer.WrongUse(told.Fault);
        }

        if (buffer is not null)
        {
            Read<Money> given = CommandInput.Amount("--buffer", buffer, book.Household.Currency, book.Household.Settings.Numbers);
            if (!given.Ok)
            {
                return new Answer.WrongUse(given.Fault);
            }

            told = Read.Of(told.Value! with { FromBuffer = given.Value });
        }

        Read<RoutinePlan> plan = Routine.Plan(book, told.Value!);
        if (!plan.Ok)
        {
            return Answer.Because(plan.Fault);
        }

        if (accept)
        {
            return Close(store, plan.Value, incomes.Length > 0);
        }

        if (incomes.Length > 0)
        {
            store.Save(new BookChange { Draft = told.Value });
        }

        return Shown(plan.Value, closed: false, Next(plan.Value, incomes.Length > 0));
    }

    private static string Next(RoutinePlan plan, bool kept) => (kept, Closing.Of(plan)) switch
    {
        (true, { Ok: false, Fault: var fault }) => $"The amounts are kept. It can't be closed yet: {fault}",
        (false, { Ok: false, Fault: var fault }) => $"It can't be closed yet: {fault} Correct an income with --income \"Name=AMOUNT\".",
        (true, _) => "The amounts are kept; close the payday with payday run --accept.",
        (false, _) => "Close it with --accept; correct an income with --income \"Name=AMOUNT\".",
    };

    private static Answer Close(BookStore store, RoutinePlan plan, bool hasNews)
    {
        Read<Closing> closing = Closing.Of(plan);
        if (!closing.Ok)
        {
            if (hasNews)
            {
                store.Save(new BookChange { Draft = plan.Draft });
            }

            return new Answer.Refused(
            [
                "This payday can't be closed. " + closing.Fault,
                "Talk to whoever sent the bill before it is due, or to a non-profit debt adviser. "
                    + (hasNews ? "What you entered is kept." : "Nothing was changed."),
            ]);
        }

        store.Save(BookChange.Of(closing.Value));
        return Shown(plan, closed: true, "Closed and stored. Print the slip with payday slip.");
    }

    private static Answer.Done Shown(RoutinePlan plan, bool closed, string last) => new(
        [.. RoutineReport.Lines(plan), "", .. Cautions.Routine, Cautions.Cash, "", .. Remarks(plan).SelectMany(Report.Prose), last],
        RoutineJson.Of(plan, closed));

    // A misspelt name, or a date too far on, would otherwise go by unseen.
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
