using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Json;
using Payday.Lists;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Fields;
using Payday.Store.Texts;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday return</c>: taking owed-back cash to the bank.</summary>
internal static class ReturnCommand
{
    public static Command Build(CommandShell shell)
    {
        var confirm = new Option<bool>("--confirm") { Description = "The cash is at the bank: write it in the ledger." };
        Option<LocalDate?> on = OptionValues.Date("--on", "The day on which it is there. Default: today.");
        var leave = new Option<string[]>("--leave") { Description = "A pot that stays owing this time.", HelpName = "POT" };
        var notes = new Option<string[]>("--notes") { Description = "The notes that you pull from a pot, where they aren't those planned.", HelpName = "POT=NOTES" };
        var undo = new Option<bool>("--undo") { Description = "Take back the last cash return." };
        var command = new PaydayCommand(
            "return",
            "Show what the pots have to pay back, which notes to pull and what to swap, with the deposit slip; with --confirm write it.",
            "payday return --confirm") { confirm, on, leave, notes, undo };
        return Invocation.Does(command, shell, call => call.OnBook(call.Parsed.GetValue(confirm) || call.Parsed.GetValue(undo), (store, book) =>
        {
            LocalDate today = call.Shell.Today();
            if (call.Parsed.GetValue(undo))
            {
                return Undo(store, book, today);
            }

            LocalDate date = call.Parsed.GetValue(on) ?? today;
            return date > today
                ? new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(date)}: {DateTexts.StillToCome}")
                : Run(store, book, call.Parsed.GetValue(leave) ?? [], call.Parsed.GetValue(notes) ?? [], call.Parsed.GetValue(confirm) ? date : null);
        }));
    }

    private static Answer Undo(BookStore store, Book book, LocalDate today) => ReturnUndo.Last(book) switch
    {
        null => Answer.Because("No cash was taken to the bank yet."),
        var back => ReturnUndo.InTheWay(book, back) is { } obstacle
            ? UndoOption.Refused(book, obstacle)
            : UndoOption.Stored(store, book, ReturnUndo.Of(book, back, today), [("cash return", null, back.Date)]),
    };

    private static Answer Run(BookStore store, Book book, string[] leave, string[] notes, LocalDate? confirmed)
    {
        ReturnDraft draft = ReturnDraft.AsPlanned;
        foreach (string name in leave)
        {
            Result<Pot> pot = PotInput.Pot(book.Household, name);
            if (!pot.Ok)
            {
                return Answer.Wrong(pot.Fault, book.Household.Settings.Numbers);
            }

            draft = draft with { Leaves = draft.Leaves.Add(pot.Value.Id) };
        }

        foreach (string text in notes)
        {
            Result<ReturnDraft> picked = NamedInput.OfNotes(book.Household, "--notes", text, "Food=20=1,5=1.").Then(named => PotInput.Pot(book.Household, named.Name)
                .Then(pot => NoteList.Read(book.Household, named.Value).Map(pulled => draft with { Picked = draft.Picked.SetItem(pot.Id, pulled) })));
            if (!picked.Ok)
            {
                return Answer.Wrong(picked.Fault, book.Household.Settings.Numbers);
            }

            draft = picked.Value;
        }

        ReturnPlan plan = ReturnPlan.Of(book, draft);
        if (confirmed is not { } date)
        {
            return Shown(plan, stored: false, plan.Total.IsPositive ? "When it is at the bank, write it with payday return --confirm." : "Nothing goes to the bank.");
        }

        Result<Book> returned = plan.Confirm(date);
        if (!returned.Ok)
        {
            return Answer.Because(returned.Fault, book.Household.Settings.Numbers);
        }

        store.Save(book, returned.Value);
        return Shown(plan, stored: true, "Returned and stored.");
    }

    private static Answer.Done Shown(ReturnPlan plan, bool stored, string last)
    {
        Household household = plan.Book.Household;
        NumberStyle style = household.Settings.Numbers;
        return new Answer.Done(
            [
                .. Report.Heading("Cash return"),
                .. plan.Lines.IsEmpty ? ["No pot has cash to pay back."] : Lines(plan, household, style),
                last,
            ],
            JsonSerializer.Serialize(
                new ReturnResult(
                    stored,
                    [.. plan.Lines.Select(line => new ReturnPotResult(
                        line.Pot.Name,
                        line.Owes.ToPlain(),
                        line.Notes is { } notes ? NoteText.Counts(notes, household.Currency) : null,
                        line.Swap is { } swap ? Swap(household, swap) : null,
                        line.Goes,
                        ReturnTexts.Advice(line, style)))],
                    NoteText.Counts(plan.SlipNotes, household.Currency),
                    plan.Unlisted.ToPlain(),
                    plan.Total.ToPlain()),
                ResultJson.Readable.ReturnResult));
    }

    private static IEnumerable<string> Lines(ReturnPlan plan, Household household, NumberStyle style) =>
    [
        .. Report.Table(
            style,
            [Report.Names("Pot"), Report.Amounts("to pay back"), new("pull")],
            plan.Lines.Select(line => ImmutableArray.Create(
                line.Pot.Name,
                line.Owes.ToString(style),
                !line.Goes ? "stays" : line.Notes is { } notes ? NoteText.Listed(notes, household.Currency, household.Settings.Numbers) : "?")),
            [["To the bank", plan.Total.ToString(style), ""]]),
        .. plan.Swaps.SelectMany(swap => Report.Prose($"First swap: {Swap(household, swap)}.")),
        .. plan.Lines.Select(line => ReturnTexts.Advice(line, style)).OfType<string>().SelectMany(advice => Report.Prose("! " + advice)),
        "",
        .. Report.Heading("Deposit slip"),
        .. plan.SlipNotes.Reverse().Select(note =>
            $"{note.Value,4} x {NoteText.Value(note.Key, household.Currency, household.Settings.Numbers),-6} {(Money.FromMinorUnits(note.Key, household.Currency) * note.Value).ToString(style),12}"),
        .. plan.Unlisted.IsPositive ? [$"not listed    {plan.Unlisted.ToString(style),12}"] : Array.Empty<string>(),
        $"total         {plan.Total.ToString(style),12}",
        "",
    ];

    private static string Swap(Household household, NoteSwap swap)
    {
        string with = swap.With is { } id ? Name(household, id) : "the loose notes";
        return $"{NoteText.Listed(swap.Gives, household.Currency, household.Settings.Numbers)} of {Name(household, swap.PotId)} for {NoteText.Listed(swap.Gets, household.Currency, household.Settings.Numbers)} of {with}";
    }

    private static string Name(Household household, PotId potId) => household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId.Text;
}
