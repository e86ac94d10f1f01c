using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Json;
using Payday.Lists;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday entry</c>: what came in or went out outside a payday, loose notes counted, and taking one back.</summary>
internal static class EntryCommand
{
    public static Command Build(CommandShell shell)
    {
        var way = new Argument<string?>("WAY") { Description = "in, out, or counted for the loose notes.", Arity = ArgumentArity.ZeroOrOne };
        way.LimitTo("in", "out", "counted");
        var amount = new Argument<string?>("AMOUNT") { Description = "How much.", Arity = ArgumentArity.ZeroOrOne };
        var purpose = new Option<string?>("--for") { Description = "What it is for: a pot, bill, debt or income source, buffer, loose notes, or left to place.", HelpName = "NAME" };
        var what = new Option<string?>("--what") { Description = "What it was.", HelpName = "TEXT" };
        var kind = new Option<string?>("--kind") { Description = "What sort of money, where that isn't what is usual for it.", HelpName = "KIND" };
        kind.LimitTo(EntryInput.Kinds);
        var cash = new Option<bool>("--cash") { Description = "It was cash, not money of the account." };
        var notes = new Option<string?>("--notes") { Description = "The notes, like 20=2,10=1; it was cash then.", HelpName = "NOTES" };
        Option<int?> cheque = OptionValues.Count("--cheque", "The number of the cheque it was paid by.", 1, int.MaxValue);
        Option<LocalDate?> on = OptionValues.Date("--on", "The day. Default: today.");
        Option<int?> undo = OptionValues.Count("--undo", "Take back the entry of this number.", 1, int.MaxValue);
        var command = new PaydayCommand(
            "entry", "Write down what came in or went out outside a payday: a fee, interest, a refund, a gift, a payment, a cheque, cash that was lost.", "payday entry out 12.50 --for buffer --what \"account fee\"")
        {
            way, amount, purpose, what, kind, cash, notes, cheque, on, undo,
        };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
        {
            ParseResult parsed = call.Parsed;
            LocalDate today = call.Shell.Today();
            if (parsed.GetValue(undo) is { } number)
            {
                return parsed.GetValue(way) is null ? Undo(store, book, number, today) : new Answer.WrongUse("Give --undo NUMBER alone.");
            }

            var input = new EntryInput(
                parsed.GetValue(way), parsed.GetValue(amount), parsed.GetValue(purpose), parsed.GetValue(what) ?? "", parsed.GetValue(kind),
                parsed.GetValue(cash), parsed.GetValue(notes), parsed.GetValue(cheque), parsed.GetValue(on) ?? today);
            return Enter(store, book, input, today);
        }));
    }

    private static Answer Enter(BookStore store, Book book, EntryInput input, LocalDate today)
    {
        if (input.Date > today)
        {
            return new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(input.Date)}: {DateTexts.StillToCome}");
        }

        if (input.What.Length > EntryInput.LongestWhat)
        {
            return new Answer.WrongUse($"--what has {input.What.Length} characters; shorten it to {EntryInput.LongestWhat}.");
        }

        if (input.Way == "counted")
        {
            Result<Notes> counted = input.Notes is null || input.Amount is not null || input.For is not null
                ? Result.Refused<Notes>(new ArgumentFault.CountedUnfinished())
                : NoteList.Read(book.Household, input.Notes);
            return counted.Ok ? Stored(store, book, Entering.CountLoose(book, input.Date, counted.Value, CleanText.OneLine(input.What))) : Wrong(book, counted.Fault);
        }

        Result<EntryWish> wish = input.Read(book);
        return wish.Ok ? Stored(store, book, Entering.Enter(book, wish.Value)) : Wrong(book, wish.Fault);
    }

    // What came back for a pot is among the card purchases.
    private static Answer Stored(BookStore store, Book book, Result<Book> after)
    {
        if (!after.Ok)
        {
            return Answer.Because(after.Fault, book.Household.Settings.Numbers);
        }

        store.Save(book, after.Value);
        if (after.Value.Weeks.Entries.Length == book.Weeks.Entries.Length)
        {
            return SpendAnswers.Told(after.Value, [after.Value.Weeks.Purchases[^1]], "Stored as a refund; payday spend --undo takes it back.");
        }

        AccountEntry entry = after.Value.Weeks.Entries[^1];
        return new Answer.Done(
            [CleanText.OneLine($"Entry {entry.Number}: {EntryText.Of(after.Value, entry)}, {DateText.Weekday(entry.Date)}."), "Stored."],
            JsonSerializer.Serialize(
                new EntryResult(
                    entry.Number,
                    LocalDatePattern.Iso.Format(entry.Date),
                    entry.Kind.ToString().ToLowerInvariant(),
                    PurposeNames.Of(after.Value.Household, entry.For),
                    entry.Amount.ToPlain(),
                    entry.What,
                    entry.Cheque,
                    (entry.Counted ?? entry.Notes) is { } notes ? NoteText.Counts(notes, after.Value.Household.Currency) : null),
                ResultJson.Readable.EntryResult));
    }

    private static Answer Undo(BookStore store, Book book, int number, LocalDate today) => Entering.InTheWay(book, number) is { } obstacle
        ? UndoOption.Refused(book, obstacle)
        : UndoOption.Stored(store, book, Entering.Undo(book, number, today), [("entry", null, book.Weeks.Entries[number - 1].Date)]);

    private static Answer.WrongUse Wrong(Book book, Fault fault) => new(FaultTexts.Of(fault, book.Household.Settings.Numbers));
}
