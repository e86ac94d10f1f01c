using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>What <c>payday spend</c> says.</summary>
internal static class SpendAnswers
{
    /// <summary>Reads <c>--pot LINE=POT</c> into a list, see <see cref="PurchaseList.Choose"/>, and <c>LINE=POT=AMOUNT</c>, see <see cref="PurchaseList.Split"/>.</summary>
    public static Result<PurchaseList> Choose(Book book, PurchaseList list, IEnumerable<string> pots)
    {
        var parts = new Dictionary<int, (string Given, List<(PotId? PotId, Money? Amount)> Said)>();
        foreach (string text in pots)
        {
            int number = 0;
            int at = text.IndexOf('=', StringComparison.Ordinal);
            if (at <= 0
                || !int.TryParse(text[..at], NumberStyles.None, CultureInfo.InvariantCulture, out number)
                || list.Lines.All(one => one.Number != number))
            {
                return Result.Refused<PurchaseList>(new ArgumentFault.NoLine($"--pot {text}"));
            }

            Result<(PotId? PotId, Money? Amount)> part = SpendParts.Of(book.Household, text[(at + 1)..]);
            if (!part.Ok)
            {
                return Result.Refused<PurchaseList>(new ArgumentFault.Of($"--pot {text}", part.Fault));
            }

            // A line named once, without an amount, takes its shop's other lines with it.
            if (parts.TryGetValue(number, out (string Given, List<(PotId? PotId, Money? Amount)> Said) known))
            {
                known.Said.Add(part.Value);
            }
            else
            {
                parts.Add(number, ($"--pot {text}", [part.Value]));
            }
        }

        // Each chosen by itself, in the order given.
        foreach ((int number, (string given, List<(PotId? PotId, Money? Amount)> said)) in parts)
        {
            Result<PurchaseList> chosen = said is [{ Amount: null } one] ? Result.Of(list.Choose(number, one.PotId)) : list.Split(number, said);
            if (!chosen.Ok)
            {
                return Result.Refused<PurchaseList>(new ArgumentFault.Of(given, chosen.Fault));
            }

            list = chosen.Value;
        }

        return Result.Of(list);
    }

    /// <summary>A list before it is entered.</summary>
    public static Answer.Done Proposed(Book book, PurchaseList list) => new(
        [
            .. Report.Table(
                book.Household.Settings.Numbers,
                [new("line", Align.Right), new("date"), Report.Amounts("amount"), new("pot"), Report.Names("what")],
                list.Lines.SelectMany(line => line.Entry.Parts.Select((part, i) => ImmutableArray.Create(
                    i > 0 ? "" : line.Number.ToString(CultureInfo.InvariantCulture),
                    i > 0 ? "" : DateText.Weekday(line.Entry.Date),
                    Signed(line, part).ToString(book.Household.Settings.Numbers),
                    line.IsOpen ? "?" : PotName(book, part.PotId),
                    i > 0 ? "" : line.Entry.What)))),
            .. list.Lines.Any(line => line.IsRefund)
                ? Report.Prose("! What is below zero came in: as a refund it lowers what its pot has to pay back, and the rest is the pot's again. Leave out what is none.")
                : [],
            .. list.Lines is [{ Entry.Card: { } card }, ..] ? [$"Paid by {EndText.Debt(book.Household, card)}."] : Array.Empty<string>(),
            "Name a pot with --pot LINE=POT; leave a line out with --leave LINE.",
            "Nothing is stored. Enter it with --accept.",
        ],
        JsonSerializer.Serialize(
            new SpendResult(
                false,
                [.. list.Lines.SelectMany(line => line.Entry.Parts.Select(part => new SpentResult(
                    null,
                    LocalDatePattern.Iso.Format(line.Entry.Date),
                    line.IsOpen ? "" : PotName(book, part.PotId),
                    Signed(line, part).ToPlain(),
                    null,
                    line.Entry.What,
                    null,
                    CardName(book, line.Entry.Card))))]),
            ResultJson.Readable.SpendResult));

    /// <summary>Purchases that were entered or taken back.</summary>
    public static Answer.Done Told(Book book, IEnumerable<CardPurchase> purchases, string last)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        CardPurchase[] all = [.. purchases];
        return new Answer.Done(
            [
                .. Report.Table(
                    style,
                    [new("number", Align.Right), new("date"), Report.Amounts("amount"), new("pot"), Report.Amounts("to pay back"), Report.Names("what")],
                    all.Select(purchase => ImmutableArray.Create(
                        IsFurther(purchase) ? "" : purchase.Number.ToString(CultureInfo.InvariantCulture),
                        IsFurther(purchase) ? "" : DateText.Weekday(purchase.Date),
                        purchase.Amount.ToString(style),
                        PotName(book, purchase.PotId),
                        purchase.OwedBack.ToString(style),
                        IsFurther(purchase) ? "" : purchase.What))),
                .. all.Where(part => part is { Undone: false, Whole: not null }).GroupBy(part => part.Whole)
                    .Select(whole => $"{Money.Sum(whole.Select(part => part.Amount), book.Household.Currency).ToString(style)} in one purchase; payday spend --undo {whole.Key} takes all of it back."),
                .. all.Where(part => !part.Undone).Select(part => WeekText.Early(book, part)).OfType<string>().SelectMany(early => Report.Prose($"{early}.")),
                .. all is [{ Card: { } card }, ..] ? Report.Prose(ByCard(book, all, card)) : [],
                last,
            ],
            JsonSerializer.Serialize(
                new SpendResult(
                    true,
                    [.. all.Select(purchase => new SpentResult(
                        purchase.Number,
                        LocalDatePattern.Iso.Format(purchase.Date),
                        PotName(book, purchase.PotId),
                        purchase.Amount.ToPlain(),
                        purchase.OwedBack.ToPlain(),
                        purchase.What,
                        purchase.Whole,
                        CardName(book, purchase.Card)))]),
                ResultJson.Readable.SpendResult));
    }

    private static Money Signed(PurchaseLine line, PurchasePart part) => line.IsRefund ? -part.Amount : part.Amount;

    // It goes by the number of the first part.
    private static bool IsFurther(CardPurchase purchase) => purchase.WholeNumber != purchase.Number;

    private static string? CardName(Book book, DebtId? card) => card is { } debt ? EndText.Debt(book.Household, debt) : null;

    private static string ByCard(Book book, CardPurchase[] all, DebtId card)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        string name = EndText.Debt(book.Household, card);
        string owed = $"{book.Ledger.Balances.OwedOn(card).ToString(style)} is owed on {name} now{(all[0].Undone || all[0].IsRefund ? "" : "; nothing left the account")}.";
        Money waits = book.Ledger.Balances[LedgerEnd.InAccount(Purpose.ForCard(card))];
        return owed
            + (waits.IsPositive ? $" {waits.ToString(style)} waits in the account for its next payment." : "")
            + (all.Any(part => part is { Undone: false, OwedBack.IsPositive: true }) ? " What is to pay back waits for it once it is at the bank." : "");
    }

    private static string PotName(Book book, PotId? potId) => potId is null
        ? PotInput.Buffer
        : book.Household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId.Value.Text;
}
