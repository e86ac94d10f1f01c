using System.CommandLine;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
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

    public static Command Build(CommandShell shell)
    {
        var pot = new Argument<string?>("POT") { Description = "The pot it is for, or buffer.", Arity = ArgumentArity.ZeroOrOne };
        var amount = new Argument<string?>("AMOUNT") { Description = "What the card paid; below zero what came back.", Arity = ArgumentArity.ZeroOrOne };
        var what = new Option<string?>("--what") { Description = "What it was.", HelpName = "TEXT" };
        Option<LocalDate?> on = OptionValues.Date("--on", "The day of the purchase. Default: today.");
        var list = new Option<string?>("--list") { Description = "Many at once: a line each with date, amount and text; pots are guessed from earlier ones.", HelpName = "FILE" };
        var accept = new Option<bool>("--accept") { Description = "Enter the list as it is shown without this." };
        var ofLine = new Option<string[]>("--pot") { Description = "The pot of a line of the list, where the guess is wrong or there is none.", HelpName = "LINE=POT" };
        Option<int[]> leave = OptionValues.Counts("--leave", "A line of the list that is not to be entered, by its number.", 1, int.MaxValue, "LINE");
        Option<int?> undo = OptionValues.Count("--undo", "Take back the purchase of this number.", 1, int.MaxValue);
        var command = new PaydayCommand(
            "spend",
            "Enter what was bought by card instead of cash; the pot owes it back.",
            "payday spend Food 12.50 --what \"Corner shop\"") { pot, amount, what, on, list, accept, ofLine, leave, undo };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
        {
            ParseResult parsed = call.Parsed;
            LocalDate today = call.Shell.Today();
            return (parsed.GetValue(pot), parsed.GetValue(amount), parsed.GetValue(list), parsed.GetValue(undo)) switch
            {
                ({ } name, { } price, null, null) => One(store, book, name, price, parsed.GetValue(on) ?? today, parsed.GetValue(what) ?? "", today),
                (null, null, { } file, null) => CommandInput.WithText(
                    call.Shell,
                    file,
                    ListCells.MostBytes,
                    text => Many(store, book, text, parsed.GetValue(ofLine) ?? [], parsed.GetValue(leave) ?? [], parsed.GetValue(accept), today)),
                (null, null, null, { } number) => Undo(store, book, number, today),
                _ => new Answer.WrongUse("Give a pot and an amount, or --list FILE, or --undo NUMBER."),
            };
        }));
    }

    private static Answer One(BookStore store, Book book, string name, string price, LocalDate date, string what, LocalDate today)
    {
        Result<PotOrBuffer> pot = PotInput.PotOrBuffer(book.Household, name);
        if (!pot.Ok)
        {
            return new Answer.WrongUse(FaultTexts.Of(pot.Fault, book.Household.Settings.Numbers));
        }

        Result<Money> amount = Money.ParseSum(price, book.Household.Currency, book.Household.Settings.Numbers);
        if (!amount.Ok)
        {
            return new Answer.WrongUse(FaultTexts.Of(amount.Fault, book.Household.Settings.Numbers));
        }

        if (what.Length > LongestWhat)
        {
            return new Answer.WrongUse($"--what has {what.Length} characters; shorten it to {LongestWhat}.");
        }

        if (date > today)
        {
            return new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(date)}: {DateTexts.StillToCome}");
        }

        Result<Book> entered = Purchasing.Enter(book, new PurchaseEntry(date, pot.Value.PotId, amount.Value, what));
        return entered.Ok ? Stored(store, book, entered.Value) : Answer.Because(FaultTexts.Of(entered.Fault, book.Household.Settings.Numbers));
    }

    private static Answer Many(BookStore store, Book book, string text, string[] pots, int[] leave, bool accept, LocalDate today)
    {
        PurchaseList list = ListCells.Purchases(book, text, today);
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
            return new Answer.WrongUse(FaultTexts.Of(chosen.Fault, book.Household.Settings.Numbers));
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
        return entered.Ok ? Stored(store, book, entered.Value) : Answer.Because(FaultTexts.Of(entered.Fault, book.Household.Settings.Numbers));
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
            return Answer.Because(FaultTexts.Of(undone.Fault, book.Household.Settings.Numbers));
        }

        store.Save(book, undone.Value);
        return SpendAnswers.Told(undone.Value, [undone.Value.Weeks.Purchases[number - 1]], "Taken back.");
    }

    private static Answer.Done Stored(BookStore store, Book before, Book after)
    {
        store.Save(before, after);
        return SpendAnswers.Told(after, after.Weeks.Purchases[before.Weeks.Purchases.Length..], "Stored.");
    }
}
