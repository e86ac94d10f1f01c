using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Fields;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday count</c>: the week's end.</summary>
internal static class CountCommand
{
    public static Command Build(CommandShell shell)
    {
        var left = new Argument<string[]>("POT=LEFT") { Description = "What is left of a pot: an amount or a sum. Without any, what should be there is shown.", Arity = ArgumentArity.ZeroOrMore };
        Option<LocalDate?> on = OptionValues.Date("--on", "The day that is counted for, its end. Default: today; yesterday where today's fills wait.");
        var move = new Option<string[]>("--move") { Description = "Where what is left goes: a pot, a debt, buffer or stays. Default: what the pot proposes.", HelpName = "POT=TARGET" };
        var notes = new Option<string[]>("--notes") { Description = "What is left of a pot, note by note: all that lies in it, with what it has to pay back; POT=none for nothing.", HelpName = "POT=NOTES" };
        var missing = new Option<string[]>("--missing") { Description = "What is neither there nor known to be spent; kept by its name.", HelpName = "POT=AMOUNT" };
        var found = new Option<string[]>("--found") { Description = "Take more being left than was there as found; kept by its name.", HelpName = "POT" };
        var name = new Option<string?>("--name") { Description = "What to call what is missing or found.", HelpName = "TEXT" };
        Option<string[]> undo = UndoOption.OfPots("Take back the last count, or the last one of each pot named.");
        var command = new PaydayCommand(
            "count",
            "Count what is left of the cash pots, and so what was spent.",
            "payday count Food=21.50 Fares=3+2 --move Food=buffer") { left, notes, on, move, missing, found, name, undo };
        return Invocation.Does(command, shell, call => call.OnBook(IsEntered(call.Parsed), (store, book) =>
        {
            LocalDate today = call.Shell.Today();
            if (UndoOption.IsGiven(call.Parsed, undo))
            {
                return Undo(store, book, call.Parsed.GetValue(undo) ?? [], today);
            }

            LocalDate date = call.Parsed.GetValue(on) ?? CountWeeks.DayFor(book, today);
            if (date > today)
            {
                return new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(date)}: {DateTexts.StillToCome}");
            }

            // Entries of the same day that were begun on the screen go on here.
            var draft = new CountDraft(date);
            string[] pots = call.Parsed.GetValue(left) ?? [];
            string[] byNotes = call.Parsed.GetValue(notes) ?? [];
            Result<CountDraft> entered = CountInput.Left(book, pots.Length + byNotes.Length > 0 && book.Weeks.Draft?.Date == date ? book.Weeks.Draft : draft, pots);
            entered = entered.Ok ? CountInput.Notes(book, entered.Value, byNotes) : entered;
            entered = entered.Ok ? CountInput.Moves(book, entered.Value, call.Parsed.GetValue(move) ?? []) : entered;
            entered = entered.Ok
                ? CountInput.Differences(book, entered.Value, call.Parsed.GetValue(missing) ?? [], call.Parsed.GetValue(found) ?? [], call.Parsed.GetValue(name) ?? "")
                : entered;
            return entered.Ok ? Count(store, CountPlan.Of(book, entered.Value)) : Answer.Wrong(entered.Fault, book.Household.Settings.Numbers);
        }));

        bool IsEntered(ParseResult parsed) => UndoOption.IsGiven(parsed, undo) || new string[]?[] { parsed.GetValue(left), parsed.GetValue(notes), parsed.GetValue(move), parsed.GetValue(missing), parsed.GetValue(found) }.Any(given => given is { Length: > 0 });
    }

    private static Answer Undo(BookStore store, Book book, string[] names, LocalDate today)
    {
        Result<ImmutableSortedSet<PotId>> pots = UndoOption.Pots(book.Household, names);
        if (!pots.Ok)
        {
            return Answer.Wrong(pots.Fault, book.Household.Settings.Numbers);
        }

        ImmutableArray<WeekCount> counts = pots.Value.IsEmpty ? CountUndo.Last(book) : [.. pots.Value.Select(book.Weeks.LastCountOf).OfType<WeekCount>()];
        if (counts.IsEmpty)
        {
            return Answer.Because(pots.Value.IsEmpty ? "No count was confirmed yet." : "That pot was not counted yet.");
        }

        return CountUndo.InTheWay(book, counts) is { } obstacle
            ? UndoOption.Refused(book, obstacle)
            : UndoOption.Stored(store, book, CountUndo.Of(book, counts, today), counts.Select(count => ("count", (PotId?)count.PotId, count.Date)));
    }

    private static IEnumerable<string> Said(CountPlan plan) => plan.Faults.Select(fault => CountTexts.Of(fault, plan.Book.Household.Settings.Numbers));

    private static Answer Count(BookStore store, CountPlan plan)
    {
        if (plan.Counted == 0)
        {
            return Shown(plan, "Say what is left with payday count POT=LEFT.");
        }

        if (plan.Faults.Any())
        {
            bool named = plan.Rows.Any(row => row.Fault is not null && (row.Left > row.Expected || !row.Difference.IsZero));
            return new Answer.Refused(named ? [.. Said(plan), "A difference is named with --found POT or --missing POT=AMOUNT, and --name TEXT."] : [.. Said(plan)]);
        }

        Result<Book> counted = plan.Confirm();
        if (!counted.Ok)
        {
            return Answer.Because(counted.Fault, plan.Book.Household.Settings.Numbers);
        }

        store.Save(plan.Book, counted.Value);
        return Shown(plan, "Counted and stored.");
    }

    private static Answer.Done Shown(CountPlan plan, string last)
    {
        Household household = plan.Book.Household;
        NumberStyle style = household.Settings.Numbers;
        return new Answer.Done(
            [
                .. Report.Heading($"Week of {DateText.Long(plan.Week)}, counted for {DateText.Long(plan.Draft.Date)}"),
                .. plan.Rows.IsEmpty ? ["No cash pot has anything to count."] : Report.Table(
                    style,
                    CountTable.Columns(plan.Rows),
                    CountTable.Cells(plan.Rows, row => Then(household, row), style),
                    [["Spent", "", "", "", "", plan.Spent.ToString(style), .. CountTable.HasGaps(plan.Rows) ? [""] : ImmutableArray<string>.Empty, ""]]),
                .. plan.Rows.Where(row => !row.Difference.IsZero).Select(row => row.Difference.IsPositive
                    ? $"! {row.Difference.ToString(style)} is missing from {row.Pot.Name}: {row.Entry!.DifferenceName}."
                    : $"! {(-row.Difference).ToString(style)} was found in {row.Pot.Name}: {row.Entry!.DifferenceName}."),
                last,
            ],
            JsonSerializer.Serialize(
                new CountResult(
                    LocalDatePattern.Iso.Format(plan.Draft.Date),
                    LocalDatePattern.Iso.Format(plan.Week),
                    [.. plan.Rows.Select(row => new CountedResult(
                        row.Pot.Name,
                        row.Filled.ToPlain(),
                        row.OwedBack.ToPlain(),
                        row.Expected.ToPlain(),
                        row.Entry is null ? null : row.Left.ToPlain(),
                        row.Entry is null ? null : row.Spent.ToPlain(),
                        row.Difference.ToPlain(),
                        Then(household, row)))]),
                ResultJson.Readable.CountResult));
    }

    private static string Then(Household household, CountRow row) =>
        row.MovesOnTo?.NameIn(household) is { } target ? $"goes to {target}" : "stays";
}
