using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Json;
using Payday.Lists;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday move</c>: money from one purpose to another, and taking a move back.</summary>
internal static class MoveCommand
{
    private const int LongestWhy = 60;

    public static Command Build(CommandShell shell)
    {
        var from = new Argument<string?>("FROM") { Description = "What gives it: a pot, a bill, buffer or loose notes; \"Food, not in notes\" for what waits in the account for a cash pot.", Arity = ArgumentArity.ZeroOrOne };
        var to = new Argument<string?>("TO") { Description = "What gets it: a pot, a bill, a debt, buffer or loose notes.", Arity = ArgumentArity.ZeroOrOne };
        var amount = new Argument<string?>("AMOUNT") { Description = "How much.", Arity = ArgumentArity.ZeroOrOne };
        var why = new Option<string?>("--why") { Description = "What for.", HelpName = "TEXT" };
        var notes = new Option<string?>("--notes") { Description = "The notes that change hands, like 20=2,10=1; from the account to cash they are fetched that day.", HelpName = "NOTES" };
        Option<LocalDate?> on = OptionValues.Date("--on", "The day. Default: today.");
        var show = new Option<bool>("--show") { Description = "Only show what it would do." };
        Option<int?> undo = OptionValues.Count("--undo", "Take back the move of this number.", 1, int.MaxValue);
        var command = new PaydayCommand("move", "Move money from one purpose to another: out of the reserve, from pot to pot, from a pot to a debt.", "payday move Reserve Food 40 --why \"clutch\"")
        {
            from, to, amount, why, notes, on, show, undo,
        };
        return Invocation.Does(command, shell, call => call.OnBook(!call.Parsed.GetValue(show) || call.Parsed.GetValue(undo) is not null, (store, book) =>
        {
            ParseResult parsed = call.Parsed;
            LocalDate today = call.Shell.Today();
            return (parsed.GetValue(from), parsed.GetValue(to), parsed.GetValue(amount), parsed.GetValue(undo)) switch
            {
                ({ } gives, { } gets, { } much, null) => Read(book, gives, gets, much, parsed.GetValue(why) ?? "", parsed.GetValue(notes), parsed.GetValue(on) ?? today, today) is var entry && entry.Ok
                    ? Move(store, book, entry.Value, parsed.GetValue(show))
                    : Answer.Wrong(entry.Fault!, book.Household.Settings.Numbers),
                (null, null, null, { } number) => Undo(store, book, number, today),
                _ => new Answer.WrongUse("Give what it comes from, where it goes and an amount, or --undo NUMBER."),
            };
        }));
    }

    private static Result<MoveEntry> Read(Book book, string gives, string gets, string much, string why, string? notes, LocalDate date, LocalDate today)
    {
        if (why.Length > LongestWhy)
        {
            return Result.Refused<MoveEntry>(new ArgumentFault.TooLong("--why", why.Length, LongestWhy));
        }

        if (date > today)
        {
            return Result.Refused<MoveEntry>(new ArgumentFault.StillToCome($"--on {LocalDatePattern.Iso.Format(date)}"));
        }

        Result<LedgerEnd> from = PurposeNames.Find(book, MoveEnds.From(book), gives);
        Result<LedgerEnd> to = PurposeNames.Find(book, MoveEnds.To(book), gets);
        Result<Money> amount = Money.ParseSum(much, book.Household.Currency, book.Household.Settings.Numbers);
        Result<Notes?> named = notes is null ? Result.Of<Notes?>(null) : NoteList.Read(book.Household, notes).Map(read => (Notes?)read);
        return !from.Ok ? Result.Refused<MoveEntry>(from.Fault)
            : !to.Ok ? Result.Refused<MoveEntry>(to.Fault)
            : !amount.Ok ? Result.Refused<MoveEntry>(amount.Fault)
            : !named.Ok ? Result.Refused<MoveEntry>(named.Fault)
            : Result.Of(new MoveEntry(date, from.Value, to.Value, amount.Value, CleanText.OneLine(why), named.Value));
    }

    private static Answer Move(BookStore store, Book book, MoveEntry entry, bool onlyShown)
    {
        Result<MoveEffect> effect = MoveEffect.Of(book, entry);
        if (!effect.Ok)
        {
            return Answer.Because(effect.Fault, book.Household.Settings.Numbers);
        }

        if (!onlyShown)
        {
            store.Save(book, effect.Value.Book);
        }

        Book after = effect.Value.Book;
        Move move = after.Weeks.Moves[^1];
        return new Answer.Done(
            [
                CleanText.OneLine($"{(onlyShown ? "Would be moved" : $"Move {move.Number}")}: {MoveText.Of(after, move)}, {DateText.Weekday(move.Date)}."),
                .. MoveText.Of(book.Household, entry, effect.Value).SelectMany(line => Report.Prose(CleanText.OneLine(line))),
                onlyShown ? "Nothing is stored. Leave out --show to do it." : "Stored.",
            ],
            Json(after, move, effect.Value, !onlyShown));
    }

    private static Answer Undo(BookStore store, Book book, int number, LocalDate today)
    {
        if (Moving.InTheWay(book, number) is { } obstacle)
        {
            return UndoOption.Refused(book, obstacle);
        }

        return UndoOption.Stored(store, book, Moving.Undo(book, number, today), [("move", null, book.Weeks.Moves[number - 1].Date)]);
    }

    private static string Json(Book book, Move move, MoveEffect effect, bool isStored) => JsonSerializer.Serialize(
        new MoveResult(
            isStored,
            isStored ? move.Number : null,
            LocalDatePattern.Iso.Format(move.Date),
            PurposeNames.Of(book.Household, move.From),
            PurposeNames.Of(book.Household, move.To),
            move.Amount.ToPlain(),
            JsonNamingPolicy.CamelCase.ConvertName(effect.Way.ToString()),
            effect.FromAfter.ToPlain(),
            effect.ToAfter.ToPlain(),
            effect.Notes is { } notes ? NoteText.Counts(notes, book.Household.Currency) : null,
            move.Why),
        ResultJson.Readable.MoveResult);
}
