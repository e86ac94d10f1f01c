using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Weeks;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Text;

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
        var command = new PaydayCommand(
            "fill",
            "Show which pots to fill by a day, with which notes; with --done mark them.",
            "payday fill --done --skip Treats") { on, done, skip };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) => Run(
            store, book, call.Parsed.GetValue(on) ?? call.Shell.Today(), call.Parsed.GetValue(done), call.Parsed.GetValue(skip) ?? [])));
    }

    private static Answer Run(BookStore store, Book book, LocalDate day, bool done, string[] skip)
    {
        var skipped = new HashSet<string>(StringComparer.Ordinal);
        foreach (string name in skip)
        {
            Read<Core.Pots.Pot> pot = PotInput.Pot(book.Household, name);
            if (!pot.Ok)
            {
                return new Answer.WrongUse(pot.Fault);
            }

            skipped.Add(pot.Value.Id);
        }

        ImmutableArray<FillPart> waiting = WalletFills.Waiting(book, day);
        Book after = book;
        foreach (FillPart part in waiting.Where(part => done || skipped.Contains(part.Pot.Id)))
        {
            FillState state = skipped.Contains(part.Pot.Id) ? FillState.Skipped : FillState.Done;
            Read<Book> marked = WalletFills.Mark(after, part.Key, state, WalletFills.DoneOn(part.Key, day));
            if (!marked.Ok)
            {
                return Answer.Because(marked.Fault);
            }

            after = marked.Value;
        }

        if (after != book)
        {
            store.Save(BookChange.Between(book, after));
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
                    [Report.Names("Pot"), new("day"), Report.Amounts("amount"), new("notes"), new("state")],
                    parts.Select(part => ImmutableArray.Create(
                        part.Pot.Name,
                        DateText.Weekday(part.Key.Day),
                        part.Amount.ToString(household.Settings.Numbers),
                        NoteText.Listed(part.Notes, household.Currency, household.Settings.Numbers),
                        state(part)))),
                .. parts.Any(part => state(part) == ToFill) ? ["When they are filled, mark them with payday fill --done."] : Array.Empty<string>(),
            ],
        JsonSerializer.Serialize(
            new FillsResult([.. parts.Select(part => new FillResult(
                part.Pot.Name,
                LocalDatePattern.Iso.Format(part.Key.Day),
                part.Amount.ToPlain(),
                NoteText.Counts(part.Notes, household.Currency),
                state(part)))]),
            ResultJson.Readable.FillsResult));
}
