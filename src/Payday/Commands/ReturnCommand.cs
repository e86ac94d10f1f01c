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
using Payday.Pages;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Slips;
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
        var slip = new Option<bool>("--slip") { Description = "The deposit slip alone, as it prints." };
        var anew = new Option<bool>("--anew") { Description = "All as planned, whatever was decided before on the screen or line by line." };
        var papers = new PaperOptions("A6; for large print letter or A4, as is usual with the currency.");
        var command = new PaydayCommand(
            "return",
            "Show what the pots have to pay back, which notes to pull and what to swap, with the deposit slip, also as a PDF or on a printer; with --confirm write it.",
            "payday return --pdf deposit.pdf") { confirm, on, leave, notes, slip, anew, undo };
        papers.AddTo(command);
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            SlipWish wish = papers.Wish(parsed, filling: false);
            bool wantsSlip = parsed.GetValue(slip) || wish.IsAny;
            bool changes = parsed.GetValue(confirm) || parsed.GetValue(undo);
            return wish.Fault is { } fault ? new Answer.WrongUse(fault)
                : wantsSlip && changes ? new Answer.WrongUse("The slip comes first: leave --confirm and --undo out until the cash is at the bank.")
                : call.OnBook(changes, (store, book) =>
                {
                    LocalDate today = call.Shell.Today();
                    if (parsed.GetValue(undo))
                    {
                        return Undo(store, book, today);
                    }

                    LocalDate date = parsed.GetValue(on) ?? today;
                    if (date > today && !wantsSlip)
                    {
                        return new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(date)}: {DateTexts.StillToCome}");
                    }

                    ReturnDraft begun = parsed.GetValue(anew) ? ReturnDraft.AsPlanned : KeptReturn.Of(book);
                    Result<ReturnDraft> draft = Decided(book.Household, begun, parsed.GetValue(leave) ?? [], parsed.GetValue(notes) ?? []);
                    return !draft.Ok ? Answer.Wrong(draft.Fault, book.Household.Settings.Numbers)
                        : wantsSlip ? Slip(ReturnPlan.Of(book, draft.Value), date, new PaperAnswers(wish, call.Folder, book.Household.Currency))
                        : Run(store, ReturnPlan.Of(book, draft.Value), parsed.GetValue(confirm) ? date : null);
                });
        });
    }

    private static Answer Undo(BookStore store, Book book, LocalDate today) => ReturnUndo.Last(book) switch
    {
        null => Answer.Because("No cash was taken to the bank yet."),
        var back => ReturnUndo.InTheWay(book, back) is { } obstacle
            ? UndoOption.Refused(book, obstacle)
            : UndoOption.Stored(store, book, ReturnUndo.Of(book, back, today), [("cash return", null, back.Date)]),
    };

    private static Result<ReturnDraft> Decided(Household household, ReturnDraft begun, string[] leave, string[] notes)
    {
        var draft = Result.Of(begun);
        foreach (string name in leave)
        {
            draft = draft.Then(so => PotInput.Pot(household, name).Map(pot => so with { Leaves = so.Leaves.Add(pot.Id) }));
        }

        foreach (string text in notes)
        {
            draft = draft.Then(so => NamedInput.OfNotes(household, "--notes", text, "Food=20=1,5=1.").Then(named => PotInput.Pot(household, named.Name)
                .Then(pot => NoteList.Read(household, named.Value).Map(pulled => so with { Picked = so.Picked.SetItem(pot.Id, pulled) }))));
        }

        return draft;
    }

    // Without a note that is known there is no slip: it would say that there is nothing to pay in.
    private static Answer Slip(ReturnPlan plan, LocalDate date, PaperAnswers papers)
    {
        Household household = plan.Book.Household;
        if (plan.SlipNotes.IsEmpty)
        {
            return Answer.Because(plan.Total.IsPositive
                ? "The notes that go to the bank are not known, so there is nothing to write on a slip: name them with --notes POT=NOTES."
                : "No cash goes to the bank, so there is no slip.");
        }

        SlipData data = BankPapers.Deposit(household, date, plan.SlipNotes);
        return papers.Of(
            (size, fonts) => PrintedPaper.Slip(data, size, papers.Wish.Print, fonts, papers.Wish.Columns),
            columns => SlipLayout.Lay(data, columns),
            [
                .. plan.Unlisted.IsPositive
                    ? Report.Prose($"! {plan.Unlisted.ToString(household.Settings.Numbers)} more goes in notes that are not known: name them with --notes POT=NOTES, or write them on the slip.").Prepend("")
                    : [],
            ],
            () => Json(plan, stored: false));
    }

    private static Answer Run(BookStore store, ReturnPlan plan, LocalDate? confirmed)
    {
        if (confirmed is not { } date)
        {
            return Shown(plan, stored: false, plan.Total.IsPositive ? "When it is at the bank, write it with payday return --confirm." : "Nothing goes to the bank.");
        }

        Result<Book> returned = plan.Confirm(date);
        if (!returned.Ok)
        {
            return Answer.Because(returned.Fault, plan.Book.Household.Settings.Numbers);
        }

        store.Save(plan.Book, KeptReturn.In(returned.Value, ReturnDraft.AsPlanned));
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
            Json(plan, stored));
    }

    private static string Json(ReturnPlan plan, bool stored)
    {
        Household household = plan.Book.Household;
        return JsonSerializer.Serialize(
            new ReturnResult(
                stored,
                [.. plan.Lines.Select(line => new ReturnPotResult(
                    line.Pot.Name,
                    line.Owes.ToPlain(),
                    line.Notes is { } notes ? NoteText.Counts(notes, household.Currency) : null,
                    line.Swap is { } swap ? Swap(household, swap) : null,
                    line.Goes,
                    ReturnTexts.Advice(line, household.Settings.Numbers)))],
                NoteText.Counts(plan.SlipNotes, household.Currency),
                plan.Unlisted.ToPlain(),
                plan.Total.ToPlain()),
            ResultJson.Readable.ReturnResult);
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
