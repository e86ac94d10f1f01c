using System.CommandLine;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Store;

namespace Payday.Commands;

/// <summary><c>payday run</c>: the routine without the screen.</summary>
internal static class RunCommand
{
    public static Command Build(CommandShell shell)
    {
        var on = new Option<string?>("--on") { Description = "The payday. Default: the first that is not closed.", HelpName = "DATE" };
        var accept = new Option<bool>("--accept") { Description = "Take every proposal and close the payday." };
        var income = new Option<string[]>("--income")
        {
            Description = "What really came in; a name that is no source is a one-off. It is kept for the next run.",
            HelpName = "Name=AMOUNT",
        };
        var command = new Command("run", CommandTree.Help(
            "Show the payday routine, all proposals taken; with --accept close it.",
            "payday run --income \"Night shifts=1204.55\" --accept")) { on, accept, income };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) => Run(
            store, book, call.Parsed.GetValue(on), call.Parsed.GetValue(income) ?? [], call.Parsed.GetValue(accept))));
    }

    /// <summary>The draft to go on with: the one begun, or a new one for the first payday not closed.</summary>
    public static Read<RoutineDraft> DraftFor(Book book, string? on)
    {
        if (on is null)
        {
            if (book.Draft is { } begun)
            {
                return Read.Of(begun);
            }

            Read<LocalDate> next = Routine.Next(book);
            return next.Ok ? Read.Of(new RoutineDraft(next.Value)) : Read.Refused<RoutineDraft>(next.Fault);
        }

        Read<LocalDate> date = CommandInput.Date("--on", on);
        if (!date.Ok)
        {
            return Read.Refused<RoutineDraft>(date.Fault);
        }

        return Read.Of(book.Draft?.Payday == date.Value ? book.Draft : new RoutineDraft(date.Value));
    }

    private static Answer Run(BookStore store, Book book, string? on, string[] incomes, bool accept)
    {
        Read<RoutineDraft> draft = DraftFor(book, on);
        if (!draft.Ok)
        {
            return Answer.Because(draft.Fault);
        }

        Read<RoutineDraft> told = IncomeInput.Apply(book, draft.Value, incomes);
        if (!told.Ok)
        {
            return Answer.Because(told.Fault);
        }

        Read<RoutinePlan> plan = Routine.Plan(book, told.Value);
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

        return Shown(plan.Value, closed: false, incomes.Length > 0
            ? "The amounts are kept; close the payday with payday run --accept."
            : "Close it with payday run --accept; correct an income with --income \"Name=AMOUNT\".");
    }

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

        store.Save(new BookChange { Movements = closing.Value.Movements, Closed = closing.Value.Closed, DropsDraft = true });
        return Shown(plan, closed: true, "Closed and stored. Print the slip with payday slip.");
    }

    private static Answer.Done Shown(RoutinePlan plan, bool closed, string last) => new(
        [.. RoutineReport.Lines(plan), "", .. Cautions.Routine, Cautions.Cash, "", last],
        RoutineJson.Of(plan, closed));
}
