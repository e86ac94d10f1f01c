using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday fill</c>: the week's cash, from home into the wallet.</summary>
internal static class FillCommand
{
    private const string ToFill = "to fill";

    public static Command Build(CommandShell shell)
    {
        Option<LocalDate?> on = OptionValues.Date("--on", "The day. Default: today.");
        var done = new Option<bool>("--done") { Description = "Mark what is to be filled by that day as done." };
        var skip = new Option<string[]>("--skip") { Description = "Mark a pot's fills by that day as skipped: the cash stays at home.", HelpName = "POT" };
        var got = new Option<string?>("--got")
        {
            Description = "What the bank really gave for the last slip, by value: 20=22,10=15; the filling is planned anew with it. 'slip' takes that back.",
            HelpName = "NOTES",
        };
        Option<string[]> undo = UndoOption.OfPots("Take back the marks of the last fill day that has any, of all pots or of those named.");
        var command = new PaydayCommand(
            "fill",
            "Show which pots to fill by a day, with which notes; with --done mark them.",
            "payday fill --done --skip Treats") { on, done, skip, got, undo };
        return Invocation.Does(command, shell, call => call.OnBook(IsEntered(call.Parsed), (store, book) => call.Parsed.GetValue(got) is { } given
            ? call.Parsed.GetValue(done) || call.Parsed.GetValue(skip) is { Length: > 0 } || UndoOption.IsGiven(call.Parsed, undo)
                ? new Answer.WrongUse("--got enters notes and marks nothing; leave out --done, --skip and --undo, and mark the fills afterwards.")
                : ReceivedNotesAnswer.Enter(store, book, given, call.Parsed.GetValue(on), call.Shell.Today())
            : UndoOption.IsGiven(call.Parsed, undo)
            ? Undo(store, book, call.Parsed.GetValue(undo) ?? [], call.Shell.Today())
            : Run(store, book, call.Parsed.GetValue(on) ?? call.Shell.Today(), call.Parsed.GetValue(done), call.Parsed.GetValue(skip) ?? [])));

        bool IsEntered(ParseResult parsed) => UndoOption.IsGiven(parsed, undo) || parsed.GetValue(got) is not null || parsed.GetValue(done) || parsed.GetValue(skip) is { Length: > 0 };
    }

    private static Answer Undo(BookStore store, Book book, string[] names, LocalDate today)
    {
        Result<ImmutableSortedSet<PotId>> pots = UndoOption.Pots(book.Household, names);
        if (!pots.Ok)
        {
            return Answer.Wrong(pots.Fault, book.Household.Settings.Numbers);
        }

        ImmutableArray<WalletFill> marks = WalletFills.LastMarked(book, pots.Value.IsEmpty ? null : pots.Value);
        if (marks.IsEmpty)
        {
            return Answer.Because("No fill is marked.");
        }

        Book after = book;
        foreach (WalletFill mark in marks)
        {
            if (WalletFills.InTheWay(after, mark.Key) is { } obstacle)
            {
                return UndoOption.Refused(book, obstacle);
            }

            Result<Book> back = WalletFills.Unmark(after, mark.Key, today);
            if (!back.Ok)
            {
                return Answer.Because(back.Fault, book.Household.Settings.Numbers);
            }

            after = back.Value;
        }

        return UndoOption.Stored(store, book, Result.Of(after), marks.Select(mark => ("fill", (PotId?)mark.Key.PotId, mark.Key.Day)));
    }

    private static Answer Run(BookStore store, Book book, LocalDate day, bool done, string[] skip)
    {
        var skipped = new HashSet<PotId>();
        foreach (string name in skip)
        {
            Result<Core.Pots.Pot> pot = PotInput.Pot(book.Household, name);
            if (!pot.Ok)
            {
                return Answer.Wrong(pot.Fault, book.Household.Settings.Numbers);
            }

            skipped.Add(pot.Value.Id);
        }

        ImmutableArray<FillPart> waiting = WalletFills.Waiting(book, day);
        Book after = book;
        foreach (FillPart part in waiting.Where(part => done || skipped.Contains(part.Pot.Id)))
        {
            FillState state = skipped.Contains(part.Pot.Id) ? FillState.Skipped : FillState.Done;
            Result<Book> marked = WalletFills.Mark(after, part.Key, state, WalletFills.DoneOn(part.Key, day));
            if (!marked.Ok)
            {
                return Answer.Because(marked.Fault, book.Household.Settings.Numbers);
            }

            after = marked.Value;
        }

        if (after != book)
        {
            store.Save(book, after);
        }

        Dictionary<FillKey, FillState> states = after.Weeks.Fills.ToDictionary(fill => fill.Key, fill => fill.State);
        return Shown(book.Household, waiting, part => states.TryGetValue(part.Key, out FillState state) ? state == FillState.Done ? "done" : "skipped" : ToFill);
    }

    private static Answer.Done Shown(Household household, ImmutableArray<FillPart> parts, Func<FillPart, string> state) => new(
        parts.IsEmpty
            ? ["Nothing is to be filled."]
            :
            [
                .. Report.Table(
                    household.Settings.Numbers,
                    FillTable.Columns,
                    parts.Select(part => FillTable.Cells(part, state(part), household.Settings.Numbers))),
                .. parts.Any(part => state(part) == ToFill) ? ["When they are filled, mark them with payday fill --done."] : Array.Empty<string>(),
            ],
        JsonSerializer.Serialize(
            new FillsResult([.. parts.Select(part => new FillResult(
                part.Pot.Name,
                LocalDatePattern.Iso.Format(part.Key.Day),
                part.Moves.ToPlain(),
                NoteText.Counts(part.Moves == part.Amount ? part.Notes : Notes.None, household.Currency),
                state(part)))]),
            ResultJson.Readable.FillsResult));
}
