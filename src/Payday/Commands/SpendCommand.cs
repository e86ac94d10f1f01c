using System.Collections.Immutable;
using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Lists;
using Payday.Store;
using Payday.Store.Fields;
using Payday.Store.Texts;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday spend</c>: card purchases, one or a list, and taking one back.</summary>
internal static class SpendCommand
{
    private const int LongestWhat = 60;

    private static Answer.WrongUse NothingGiven { get; } = new("Give a pot and an amount, or several like Food=12.50, or --list FILE, or --undo NUMBER.");

    public static Command Build(CommandShell shell)
    {
        var said = new Argument<string[]>("POT AMOUNT | POT=AMOUNT") { Description = "The pot it is for, or buffer, and what the card paid; below zero what came back. For several pots each with its part.", Arity = ArgumentArity.ZeroOrMore };
        var total = new Option<string?>("--total") { Description = "What was paid in all; a pot without an amount has the rest of it.", HelpName = "AMOUNT" };
        var card = new Option<string?>("--card") { Description = "The debt whose card paid: its balance rises, and the pot's money waits for its next payment.", HelpName = "DEBT" };
        var what = new Option<string?>("--what") { Description = "What it was.", HelpName = "TEXT" };
        Option<LocalDate?> on = OptionValues.Date("--on", "The day of the purchase. Default: today.");
        var list = new Option<string?>("--list") { Description = "Many at once: a line each with date, amount and text; pots are guessed from earlier ones.", HelpName = "FILE" };
        var accept = new Option<bool>("--accept") { Description = "Enter the list as it is shown without this." };
        var ofLine = new Option<string[]>("--pot") { Description = "The pot of a line of the list, where the guess is wrong or there is none; LINE=POT=AMOUNT for each of several pots.", HelpName = "LINE=POT" };
        Option<int[]> leave = OptionValues.Counts("--leave", "A line of the list that is not to be entered, by its number.", 1, int.MaxValue, "LINE");
        Option<int?> undo = OptionValues.Count("--undo", "Take back the purchase of this number.", 1, int.MaxValue);
        var command = new PaydayCommand(
            "spend",
            "Enter what was bought by card instead of cash; the pot has it to pay back.",
            "payday spend Food 12.50 --what \"Corner shop\"") { said, total, card, what, on, list, accept, ofLine, leave, undo };
        return Invocation.Does(command, shell, call => call.OnBook(call.Parsed.GetValue(list) is null || call.Parsed.GetValue(accept), (store, book) =>
        {
            ParseResult parsed = call.Parsed;
            LocalDate today = call.Shell.Today();
            string[] parts = parsed.GetValue(said) ?? [];
            Result<Debt?> paidBy = SpendParts.Card(book.Household, "--card", parsed.GetValue(card));
            if (!paidBy.Ok)
            {
                return Answer.Wrong(paidBy.Fault, book.Household.Settings.Numbers);
            }

            return (parts.Length, parsed.GetValue(total), parsed.GetValue(list), parsed.GetValue(undo)) switch
            {
                ( > 0, var whole, null, null) => One(store, book, parts, whole, paidBy.Value, parsed.GetValue(on) ?? today, parsed.GetValue(what) ?? "", today),
                (0, null, { } file, null) => CommandInput.WithText(
                    call.Shell,
                    file,
                    ListCells.MostBytes,
                    text => Many(store, book, text, paidBy.Value, parsed.GetValue(ofLine) ?? [], parsed.GetValue(leave) ?? [], parsed.GetValue(accept), today)),
                (0, null, null, { } number) => Undo(store, book, number, today),
                _ => NothingGiven,
            };
        }));
    }

    private static Answer One(BookStore store, Book book, string[] said, string? whole, Debt? card, LocalDate date, string what, LocalDate today)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        if (said.Length == 1 && whole is null && PotInput.Pair(said[0]) is null)
        {
            return NothingGiven;
        }

        Result<Money> total = whole is null ? Result.Of(Money.Zero(book.Household.Currency)) : Money.ParseSum(whole, book.Household.Currency, style);
        if (!total.Ok)
        {
            return new Answer.WrongUse($"--total {whole}: {FaultTexts.Of(total.Fault, style)}");
        }

        Result<ImmutableArray<PurchasePart>> parts = SpendParts.IsOne(book.Household, said, whole is not null)
            ? Single(book, said[0], said[1])
            : SpendParts.All(book, said, whole is null ? null : total.Value);
        if (!parts.Ok)
        {
            return Answer.Wrong(parts.Fault, style);
        }

        if (what.Length > LongestWhat)
        {
            return new Answer.WrongUse($"--what has {what.Length} characters; shorten it to {LongestWhat}.");
        }

        if (date > today)
        {
            return new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(date)}: {DateTexts.StillToCome}");
        }

        Result<Book> entered = Purchasing.Enter(book, new PurchaseEntry(date, null, total.Value, what) { Card = card?.Id }.With(parts.Value));
        return entered.Ok ? Stored(store, book, entered.Value) : Answer.Because(entered.Fault, book.Household.Settings.Numbers);
    }

    private static Result<ImmutableArray<PurchasePart>> Single(Book book, string name, string price)
    {
        Result<PotOrBuffer> pot = PotInput.PotOrBuffer(book.Household, name);
        Result<Money> amount = Money.ParseSum(price, book.Household.Currency, book.Household.Settings.Numbers);
        return !pot.Ok ? Result.Refused<ImmutableArray<PurchasePart>>(pot.Faults)
            : !amount.Ok ? Result.Refused<ImmutableArray<PurchasePart>>(amount.Faults)
            : Result.Of<ImmutableArray<PurchasePart>>([new PurchasePart(pot.Value.PotId, amount.Value)]);
    }

    private static Answer Many(BookStore store, Book book, string text, Debt? card, string[] pots, int[] leave, bool accept, LocalDate today)
    {
        PurchaseList list = ListCells.Purchases(book, text, today).By(card?.Id);
        foreach (int number in leave.Distinct())
        {
            if (list.Without(number) is not { } rest)
            {
                return new Answer.WrongUse($"--leave {number}: the list has no line {number}.");
            }

            list = rest;
        }

        if (!list.Faults.IsEmpty)
        {
            return new Answer.Refused([.. list.Faults.Select(fault => FaultTexts.Of(fault, book.Household.Settings.Numbers))]);
        }

        if (list.Lines.IsEmpty)
        {
            return Answer.Because("The list has no lines to enter.");
        }

        Result<PurchaseList> chosen = SpendAnswers.Choose(book, list, pots);
        if (!chosen.Ok)
        {
            return Answer.Wrong(chosen.Fault, book.Household.Settings.Numbers);
        }

        if (!accept)
        {
            return SpendAnswers.Proposed(book, chosen.Value);
        }

        int[] open = [.. chosen.Value.Open.Select(line => line.Number)];
        if (open.Length > 0)
        {
            return Answer.Because(
                $"No pot is known for line {string.Join(", ", open)}; name it with --pot {open[0]}=POT, or leave the line out with --leave {open[0]}.");
        }

        Result<Book> entered = PurchaseList.Enter(book, chosen.Value.Lines);
        return entered.Ok ? Stored(store, book, entered.Value) : Answer.Because(entered.Fault, book.Household.Settings.Numbers);
    }

    private static Answer Undo(BookStore store, Book book, int number, LocalDate today)
    {
        if (Purchasing.InTheWay(book, number) is { } obstacle)
        {
            return UndoOption.Refused(book, obstacle);
        }

        Result<Book> undone = Purchasing.Undo(book, number, today);
        if (!undone.Ok)
        {
            return Answer.Because(undone.Fault, book.Household.Settings.Numbers);
        }

        store.Save(book, undone.Value);
        return SpendAnswers.Told(undone.Value, undone.Value.Weeks.PartsOf(number), "Taken back.");
    }

    private static Answer.Done Stored(BookStore store, Book before, Book after)
    {
        store.Save(before, after);
        return SpendAnswers.Told(after, [.. after.Weeks.Purchases.From(before.Weeks.Purchases.Count)], "Stored.");
    }
}
