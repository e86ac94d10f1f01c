using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Pots;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday difference</c>: what counts missed or found, and clearing it up.</summary>
internal static class DifferenceCommand
{
    public static Command Build(CommandShell shell)
    {
        var name = new Argument<string?>("POT") { Description = "The pot whose difference is cleared up. None: show all that are open.", Arity = ArgumentArity.ZeroOrOne };
        var explained = new Option<bool>("--explained") { Description = "It is known what it went for: what was missing was spent, what was found had not been." };
        var turnedUp = new Option<bool>("--turned-up") { Description = "What was missing turned up and is in the pot again." };
        Option<LocalDate?> since = OptionValues.Date("--since", "The difference of the count of that day. Default: the only one of the pot.");
        var undo = new Option<bool>("--undo") { Description = "Open the difference again that was cleared up last." };
        var command = new PaydayCommand(
            "difference",
            "Show what counts missed or found and nobody has cleared up; with a pot clear it up.",
            "payday difference Food --explained") { name, explained, turnedUp, since, undo };
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            return (parsed.GetValue(name), parsed.GetValue(explained), parsed.GetValue(turnedUp), parsed.GetValue(undo)) switch
            {
                (null, false, false, false) => call.OnLook(book => Told(book, [])),
                (null, false, false, true) => call.OnBook((store, book) => UndoCommand.Difference(store, book, shell.Today())),
                ({ } text, true, false, false) => call.OnBook((store, book) => Settle(store, book, text, parsed.GetValue(since), DifferenceEnd.Explained, shell.Today())),
                ({ } text, false, true, false) => call.OnBook((store, book) => Settle(store, book, text, parsed.GetValue(since), DifferenceEnd.TurnedUp, shell.Today())),
                _ => new Answer.WrongUse("Give a pot with --explained or --turned-up, or --undo alone."),
            };
        });
    }

    private static Answer Settle(BookStore store, Book book, string text, LocalDate? since, DifferenceEnd how, LocalDate today)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Result<Pot> pot = PotInput.Pot(book.Household, text);
        if (!pot.Ok)
        {
            return Answer.Wrong(pot.Fault, style);
        }

        ImmutableArray<WeekCount> open = [.. Differences.Open(book).Where(count => count.PotId == pot.Value.Id)];
        ImmutableArray<WeekCount> meant = since is { } day ? [.. open.Where(count => count.Date == day)] : open;
        if (open.IsEmpty)
        {
            return Answer.Because($"{pot.Value.Name} has no open difference.");
        }

        if (meant.Length != 1)
        {
            return new Answer.WrongUse($"{pot.Value.Name} has open differences since {string.Join(", ", open.Select(count => LocalDatePattern.Iso.Format(count.Date)))}; say which with --since DATE.");
        }

        Result<Book> after = Differences.Settle(book, meant[0].Number, how, today);
        if (!after.Ok)
        {
            return Answer.Because(after.Fault, style);
        }

        store.Save(book, after.Value);
        return Told(after.Value, [WeekText.Difference(book, meant[0]), "It is cleared up."]);
    }

    private static Answer.Done Told(Book book, string[] done)
    {
        ImmutableArray<WeekCount> open = Differences.Open(book);
        return new Answer.Done(
            [
                .. done.SelectMany(Report.Prose),
                .. done.Length > 0 && !open.IsEmpty ? [""] : Array.Empty<string>(),
                .. open.IsEmpty ? done.Length > 0 ? [] : ["No count has an open difference."] : DifferencesReport.Table(book).Lay(Report.Width).All,
            ],
            JsonSerializer.Serialize(
                new DifferencesResult(
                    done.Length > 0,
                    [.. open.Select(count => new DifferenceResult(
                        WeekText.PotName(book, count.PotId), LocalDatePattern.Iso.Format(count.Date), count.Difference.ToPlain(), CleanText.OneLine(count.DifferenceName)))]),
                ResultJson.Readable.DifferencesResult));
    }
}
