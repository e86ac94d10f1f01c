using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>What <c>payday spend</c> says.</summary>
internal static class SpendAnswers
{
    /// <summary>Reads <c>--pot LINE=POT</c> into a list; see <see cref="PurchaseList.Choose"/>.</summary>
    public static Result<PurchaseList> Choose(Book book, PurchaseList list, IEnumerable<string> pots)
    {
        foreach (string text in pots)
        {
            int number = 0;
            if (PotInput.Pair(text) is not var (line, name)
                || !int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out number)
                || list.Lines.All(one => one.Number != number))
            {
                return Result.Refused<PurchaseList>(new ArgumentFault.NoLine($"--pot {text}"));
            }

            Result<PotOrBuffer> pot = PotInput.PotOrBuffer(book.Household, name);
            if (!pot.Ok)
            {
                return Result.Refused<PurchaseList>(new ArgumentFault.Of($"--pot {text}", pot.Fault));
            }

            list = list.Choose(number, pot.Value.PotId);
        }

        return Result.Of(list);
    }

    /// <summary>A list before it is entered.</summary>
    public static Answer.Done Proposed(Book book, PurchaseList list) => new(
        [
            .. Report.Table(
                book.Household.Settings.Numbers,
                [new("line", Align.Right), new("date"), Report.Amounts("amount"), new("pot"), Report.Names("what")],
                list.Lines.Select(line => ImmutableArray.Create(
                    line.Number.ToString(CultureInfo.InvariantCulture),
                    DateText.Weekday(line.Entry.Date),
                    Signed(line).ToString(book.Household.Settings.Numbers),
                    line.IsOpen ? "?" : PotName(book, line.Entry.PotId),
                    line.Entry.What))),
            .. list.Lines.Any(line => line.IsRefund)
                ? Report.Prose("! What is below zero came in: as a refund it lowers what its pot owes back, and the rest is the pot's again. Leave out what is none.")
                : [],
            "Name a pot with --pot LINE=POT; leave a line out with --leave LINE.",
            "Nothing is stored. Enter it with --accept.",
        ],
        JsonSerializer.Serialize(
            new SpendResult(
                false,
                [.. list.Lines.Select(line => new SpentResult(
                    null,
                    LocalDatePattern.Iso.Format(line.Entry.Date),
                    line.IsOpen ? "" : PotName(book, line.Entry.PotId),
                    Signed(line).ToPlain(),
                    null,
                    line.Entry.What))]),
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
                    [new("number", Align.Right), new("date"), Report.Amounts("amount"), new("pot"), Report.Amounts("owes back"), Report.Names("what")],
                    all.Select(purchase => ImmutableArray.Create(
                        purchase.Number.ToString(CultureInfo.InvariantCulture),
                        DateText.Weekday(purchase.Date),
                        purchase.Amount.ToString(style),
                        PotName(book, purchase.PotId),
                        purchase.OwedBack.ToString(style),
                        purchase.What))),
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
                        purchase.What))]),
                ResultJson.Readable.SpendResult));
    }

    private static Money Signed(PurchaseLine line) => line.IsRefund ? -line.Entry.Amount : line.Entry.Amount;

    private static string PotName(Book book, PotId? potId) => potId is null
        ? PotInput.Buffer
        : book.Household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId.Value.Text;
}
