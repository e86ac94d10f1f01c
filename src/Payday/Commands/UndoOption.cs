using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Undo;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>--undo</c> of what was entered between paydays, of all pots or of some.</summary>
internal static class UndoOption
{
    /// <summary>The option, with pots behind it or none.</summary>
    public static Option<string[]> OfPots(string description) =>
        new("--undo") { Description = description, HelpName = "POT", Arity = ArgumentArity.ZeroOrMore, AllowMultipleArgumentsPerToken = true };

    /// <summary>Whether it was given.</summary>
    public static bool IsGiven(ParseResult parsed, Option option) => parsed.GetResult(option) is { Implicit: false };

    /// <summary>The ids of the pots that were named.</summary>
    public static Result<ImmutableSortedSet<PotId>> Pots(Household household, string[] names)
    {
        Result<Pot>[] pots = [.. names.Select(name => PotInput.Pot(household, name))];
        return pots.FirstOrDefault(pot => !pot.Ok) is { Fault: { } fault }
            ? Result.Refused<ImmutableSortedSet<PotId>>(fault)
            : Result.Of(pots.Select(pot => pot.Value!.Id).ToImmutableSortedSet());
    }

    /// <summary>What is in the way, with the command that leads there.</summary>
    public static Answer Refused(Book book, Obstacle obstacle) => Answer.Because(UndoTexts.WithCommands(obstacle, book.Household.Settings.Numbers));

    /// <summary>Stores a book in which something was taken back, and tells of it.</summary>
    /// <param name="store">Where it is stored.</param>
    /// <param name="before">The book as it is stored.</param>
    /// <param name="after">The book afterwards, or why it can't be.</param>
    /// <param name="back">What was taken back: what it is, whose, and of which day.</param>
    public static Answer Stored(BookStore store, Book before, Result<Book> after, IEnumerable<(string What, PotId? PotId, LocalDate Date)> back)
    {
        if (!after.Ok)
        {
            return Answer.Because(after.Fault, before.Household.Settings.Numbers);
        }

        (string What, string? Pot, LocalDate Date)[] told = [.. back.Select(one => (one.What, one.PotId is { } id ? WeekText.PotName(before, id) : null, one.Date))];
        store.Save(before, after.Value);
        return new Answer.Done(
            [.. told.Select(one => CleanText.OneLine($"The {one.What}{(one.Pot is { } pot ? " of " + pot : "")}, {DateText.Weekday(one.Date)}.")), "Taken back."],
            JsonSerializer.Serialize(
                new TakenBackResult([.. told.Select(one => new TakenBack(one.What, one.Pot, LocalDatePattern.Iso.Format(one.Date)))]),
                ResultJson.Readable.TakenBackResult));
    }
}
