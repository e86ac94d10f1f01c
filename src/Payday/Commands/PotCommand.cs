using System.CommandLine;
using System.Text.Json;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Json;
using Payday.Store;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday pot</c>: what becomes of a pot that has a target by a date.</summary>
internal static class PotCommand
{
    private static readonly (string Word, int Months)[] Rhythms = [("yearly", 12), ("half-yearly", 6), ("quarterly", 3), ("monthly", 1)];

    public static Command Build(CommandShell shell)
    {
        var name = new Argument<string>("POT") { Description = "A pot with a target by a date." };
        var finished = new Option<bool>("--finished") { Description = "It has done what it was for and gets nothing any more." };
        var repeats = new Option<string?>("--repeats") { Description = "The target is needed again, counted from its date.", HelpName = string.Join('|', Rhythms.Select(rhythm => rhythm.Word)) };
        repeats.AcceptOnlyFromAmong([.. Rhythms.Select(rhythm => rhythm.Word)]);
        var goOn = new Option<bool>("--go-on") { Description = "What was spent was not all: it is filled on until its date." };
        Option<LocalDate?> by = OptionValues.Date("--by", "The target must be there by this date; what was spent is settled.");
        var command = new PaydayCommand(
            "pot",
            "Say what becomes of a pot whose money was spent, or whose date is past.",
            "payday pot \"School trip\" --by 2026-09-01") { name, finished, repeats, goOn, by };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
        {
            ParseResult parsed = call.Parsed;
            Result<Pot> pot = PotInput.Pot(book.Household, parsed.GetRequiredValue(name));
            if (!pot.Ok)
            {
                return Answer.Wrong(pot.Fault, book.Household.Settings.Numbers);
            }

            PotId id = pot.Value.Id;
            return (parsed.GetValue(finished), parsed.GetValue(repeats), parsed.GetValue(goOn), parsed.GetValue(by)) switch
            {
                (true, null, false, null) => Taken(store, book, id, SinkingAnswers.Finish(book, id)),
                (false, { } word, false, null) => Taken(store, book, id, SinkingAnswers.Repeat(book, id, EveryMonths(pot.Value, word))),
                (false, null, true, null) => Taken(store, book, id, SinkingAnswers.GoOn(book, id)),
                (false, null, false, { } date) => Taken(store, book, id, SinkingAnswers.By(book, id, date, NextPayday(book) ?? call.Shell.Today())),
                _ => new Answer.WrongUse("Say one of --finished, --repeats, --go-on and --by."),
            };
        }));
    }

    private static LocalDate? NextPayday(Book book) => Routine.Begun(book) is { Ok: true, Value: var draft } ? draft.Payday : null;

    private static Schedule? EveryMonths(Pot pot, string word) => pot.Kind is PotKind.Sinking kind
        ? new Schedule.EveryMonths(Rhythms.Single(rhythm => rhythm.Word == word).Months, kind.By)
        : null;

    private static Answer Taken(BookStore store, Book book, PotId potId, Result<Household> answer)
    {
        if (!answer.Ok)
        {
            return Answer.Because(answer.Fault, book.Household.Settings.Numbers);
        }

        Result<Book> changed = HouseholdChange.Of(book, answer.Value);
        if (!changed.Ok)
        {
            return new Answer.Refused([.. changed.Faults.Select(fault => FaultTexts.Of(fault, book.Household.Settings.Numbers))]);
        }

        store.Save(book, changed.Value);
        string what = Told(changed.Value.Household.Pots.Single(pot => pot.Id == potId));
        return new Answer.Done([what], JsonSerializer.Serialize(new DoneResult(what), ResultJson.Readable.DoneResult));
    }

    private static string Told(Pot pot) => pot.Kind switch
    {
        PotKind.Sinking { Finished: true } => $"{pot.Name} is finished and gets nothing any more.",
        PotKind.Sinking { Repeats: not null } kind => $"{pot.Name} is needed by {DateText.Long(kind.By)} and again by each date after it; what was spent counts for the first.",
        PotKind.Sinking kind => $"{pot.Name} is filled on until {DateText.Long(kind.By)}.",
        _ => $"{pot.Name} is as it was.",
    };
}
