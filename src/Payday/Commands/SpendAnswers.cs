using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Weeks;
using Payday.Json;
using Payday.Reports;
using Payday.Text;

namespace Payday.Commands;

/// <summary>A list of purchases with the pots decided on.</summary>
/// <param name="Lines">The lines, in their order.</param>
/// <param name="Undecided">The numbers of the lines that have neither a guess nor a decision.</param>
internal sealed record Chosen(ImmutableArray<PurchaseLine> Lines, IReadOnlyList<int> Undecided);

/// <summary>What <c>payday spend</c> says.</summary>
internal static class SpendAnswers
{
    /// <summary>Reads <c>--pot LINE=POT</c> into a list.</summary>
    public static Read<Chosen> Choose(Book book, PurchaseList list, IEnumerable<string> pots)
    {
        ImmutableArray<PurchaseLine> lines = list.Lines;
        HashSet<int> decided = [.. lines.Where(line => line.Guess is not null).Select(line => line.Number)];
        foreach (string text in pots)
        {
            int number = 0;
            int at = PotInput.Pair(text) is var (line, _) && int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out number)
                ? lines.ToList().FindIndex(one => one.Number == number)
                : -1;
            if (at < 0)
            {
                return Read.Refused<Chosen>($"--pot {text}: write it like 3=Food, with the number of a line.");
            }

            Read<PotOrBuffer> pot = PotInput.PotOrBuffer(book.Household, PotInput.Pair(text)!.Value.Value);
            if (!pot.Ok)
            {
                return Read.Refused<Chosen>($"--pot {text}: {pot.Fault}");
            }

            lines = lines.SetItem(at, lines[at].For(pot.Value.PotId));
            decided.Add(number);
        }

        return Read.Of(new Chosen(lines, [.. lines.Select(line => line.Number).Where(number => !decided.Contains(number))]));
    }

    /// <summary>A list before it is entered.</summary>
    public static Answer.Done Proposed(Book book, Chosen chosen) => new(
        [
            .. Report.Table(
                book.Household.Settings.Numbers,
                [new("line", Align.Right), new("date"), Report.Amounts("amount"), new("pot"), Report.Names("what")],
                chosen.Lines.Select(line => ImmutableArray.Create(
                    line.Number.ToString(CultureInfo.InvariantCulture),
                    DateText.Weekday(line.Entry.Date),
                    line.Entry.Amount.ToString(book.Household.Settings.Numbers),
                    chosen.Undecided.Contains(line.Number) ? "?" : PotName(book, line.Entry.PotId),
                    line.Entry.What))),
            "Nothing is stored. Enter it with --accept; name a pot with --pot LINE=POT.",
        ],
        JsonSerializer.Serialize(
            new SpendResult(
                false,
                [.. chosen.Lines.Select(line => new SpentResult(
                    null,
                    LocalDatePattern.Iso.Format(line.Entry.Date),
                    chosen.Undecided.Contains(line.Number) ? "" : PotName(book, line.Entry.PotId),
                    line.Entry.Amount.ToPlain(),
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

    private static string PotName(Book book, string? potId) => potId is null
        ? PotInput.Buffer
        : book.Household.Pots.FirstOrDefault(pot => pot.Id == potId)?.Name ?? potId;
}
