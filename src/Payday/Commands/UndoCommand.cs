using System.CommandLine;
using System.Globalization;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Store;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday undo</c>: what has no command of its own to take it back.</summary>
internal static class UndoCommand
{
    public static Command Build(CommandShell shell)
    {
        var payday = new Option<bool>("--payday") { Description = "Take the last closed payday up again: all that it wrote is undone." };
        var drop = new Option<bool>("--drop") { Description = "With --payday: what was decided for a later payday that is begun goes." };
        var difference = new Option<bool>("--difference") { Description = "Open the difference of a count again that was cleared up last." };
        var movement = OptionValues.Count("--movement", "Undo a ledger line that belongs to nothing else, by its number.", 1, int.MaxValue);
        var why = new Option<string?>("--why") { Description = "With --movement: why, in a few words.", HelpName = "TEXT" };
        var command = new PaydayCommand(
            "undo",
            "Take back a closed payday, a difference that was cleared up, or a single ledger line; counts, fills, purchases, returns and reconciliations have --undo of their own.",
            "payday undo --movement 31 --why \"typed twice\"") { payday, drop, difference, movement, why };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
        {
            ParseResult parsed = call.Parsed;
            LocalDate today = call.Shell.Today();
            return (parsed.GetValue(payday), parsed.GetValue(difference), parsed.GetValue(movement), parsed.GetValue(why)) switch
            {
                (true, false, null, null) => Payday(store, book, today, parsed.GetValue(drop)),
                (false, true, null, null) => Difference(store, book, today),
                (false, false, { } number, { } reason) => Movement(store, book, number, today, CleanText.OneLine(reason)),
                _ => new Answer.WrongUse("Give --payday, or --difference, or --movement NUMBER with --why TEXT."),
            };
        }));
    }

    /// <summary>Takes the last closed payday up again.</summary>
    public static Answer Payday(BookStore store, Book book, LocalDate today, bool drop)
    {
        if (Reopening.InTheWay(book) is { } obstacle)
        {
            return UndoOption.Refused(book, obstacle);
        }

        Result<Book> reopened = Reopening.Of(book, today);
        return reopened.Ok && !drop && Reopening.Drops(book) is { } begun
            ? Answer.Because($"The payday of {DateText.Day(begun.Payday)} is begun, and what was decided for it would go; say so with --drop.")
            : UndoOption.Stored(store, book, reopened, reopened.Ok ? [("closed payday", null, book.LastClosed!.Payday)] : []);
    }

    /// <summary>Opens the difference again that was cleared up last.</summary>
    public static Answer Difference(BookStore store, Book book, LocalDate today)
    {
        if (Differences.LastSettled(book) is not { } settled)
        {
            return Answer.Because("No difference was cleared up yet.");
        }

        return Differences.InTheWay(book, settled) is { } obstacle
            ? UndoOption.Refused(book, obstacle)
            : UndoOption.Stored(store, book, Differences.Reopen(book, settled, today), [("cleared difference", book.Weeks.Counts[(int)settled.Count - 1].PotId, settled.Date)]);
    }

    private static Answer Movement(BookStore store, Book book, int number, LocalDate today, string reason) => Undoing.InTheWay(book, number) is { } obstacle
        ? UndoOption.Refused(book, obstacle)
        : UndoOption.Stored(
            store, book, Undoing.Of(book, number, today, reason), [($"ledger line {number.ToString(CultureInfo.InvariantCulture)}", null, number <= book.Ledger.Movements.Count ? book.Ledger.Movements[number - 1].Date : today)]);
}
