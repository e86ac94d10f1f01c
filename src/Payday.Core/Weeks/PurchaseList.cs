using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;

namespace Payday.Core.Weeks;

/// <summary>Card purchases pasted from elsewhere: a line each with date, amount and text.</summary>
/// <param name="Lines">The lines that were read, in their order.</param>
/// <param name="Faults">What could not be read, in its order.</param>
public sealed record PurchaseList(ImmutableArray<PurchaseLine> Lines, ImmutableArray<PurchaseFault> Faults)
{
    // A year of purchases has some thousand lines; more is another file by mistake.
    private const int MostLines = 10_000;

    private const string CameIn = "its amount has another sign than most: money that came in is no purchase, so leave the line out.";

    /// <summary>Reads a list and guesses each line's pot from earlier purchases.</summary>
    /// <param name="book">The book, whose way to write numbers the amounts have.</param>
    /// <param name="text">
    /// Lines of <c>2026-03-07, 12.50, Corner shop</c>, or with the text before the amount. Between the three stands a tab, else a
    /// semicolon, else a comma, else blanks: with a decimal comma use one of the others. A text may stand in quotes. Empty lines are
    /// passed over. Amounts may all be below zero, as a bank's list has them; where only some are, those of the sign that fewer have
    /// are money that came in, and no purchases.
    /// </param>
    /// <param name="today">The date: no purchase is after it, and a date without a year is the latest such day.</param>
    public static PurchaseList Read(Book book, string text, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(text);
        var lines = new List<(PurchaseLine Line, bool BelowZero)>();
        var faults = ImmutableArray.CreateBuilder<PurchaseFault>();
        string[] rows = text.ReplaceLineEndings("\n").Split('\n');
        if (rows.Length > MostLines)
        {
            return new PurchaseList([], [new PurchaseFault(0, string.Create(CultureInfo.InvariantCulture, $"The list has {rows.Length} lines, more than {MostLines}; enter it in parts."))]);
        }

        for (int i = 0; i < rows.Length; i++)
        {
            string row = rows[i].Trim('\r', ' ', '\uFEFF');
            if (row.Length == 0)
            {
                continue;
            }

            Read<(PurchaseLine Line, bool BelowZero)> line = Line(book, i + 1, row, today);
            if (line.Ok)
            {
                lines.Add(line.Value);
            }
            else
            {
                faults.Add(new PurchaseFault(i + 1, line.Fault));
            }
        }

        // A bank's list has all that the card paid below zero; a list of one's own has none so. On a tie it is the bank's.
        int below = lines.Count(line => line.BelowZero);
        bool bought = below > 0 && 2 * below >= lines.Count;
        faults.AddRange(lines.Where(line => line.BelowZero != bought).Select(line => new PurchaseFault(line.Line.Number, CameIn)));
        return new PurchaseList(
            [.. lines.Where(line => line.BelowZero == bought).Select(line => line.Line)],
            [.. faults.OrderBy(fault => fault.Number)]);
    }

    /// <summary>A line as this household would write it.</summary>
    public static string Example(NumberStyle style) =>
        string.Join(style.DecimalMark == "," ? "; " : ", ", "2026-03-07", style.Written("12.50"), "Corner shop");

    /// <summary>Enters the purchases of a list, all or none.</summary>
    /// <param name="book">The book.</param>
    /// <param name="lines">The lines, each with the pot decided on; a line without one is taken as bought from the buffer.</param>
    /// <returns>The book afterwards; or a sentence that begins with the line that can't be entered.</returns>
    public static Read<Book> Enter(Book book, IEnumerable<PurchaseLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        foreach (PurchaseLine line in lines.OrderBy(line => line.Entry.Date))
        {
            Read<Book> entered = CardPurchases.Enter(book, line.Entry);
            if (!entered.Ok)
            {
                return Amounts.Read.Refused<Book>(string.Create(CultureInfo.InvariantCulture, $"Line {line.Number}: {entered.Fault}"));
            }

            book = entered.Value;
        }

        return Amounts.Read.Of(book);
    }

    private static Read<(PurchaseLine Line, bool BelowZero)> Line(Book book, int number, string row, LocalDate today)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        string[] parts = Parts(row);
        if (parts.Length < 3)
        {
            return Refused($"write date, amount and text, such as {Example(style)}.");
        }

        Read<LocalDate> date = TypedDate.Parse(parts[0], today);
        if (!date.Ok)
        {
            return Refused($"'{Short(parts[0])}': {date.Fault}");
        }

        if (date.Value > today)
        {
            return Refused($"'{Short(parts[0])}': that day is still to come.");
        }

        Read<Money> amount = Money.Parse(parts[1], book.Household.Currency, style);
        string what = parts[2];
        if (!amount.Ok && Money.Parse(parts[2], book.Household.Currency, style) is { Ok: true } last)
        {
            (amount, what) = (last, parts[1]);
        }

        if (!amount.Ok)
        {
            return Refused(amount.Fault);
        }

        if (amount.Value.IsZero)
        {
            return Refused("the amount is zero; leave the line out.");
        }

        Money size = amount.Value.IsNegative ? -amount.Value : amount.Value;
        PotGuess? guess = PotGuess.For(book, what);
        return Amounts.Read.Of((new PurchaseLine(number, new PurchaseEntry(date.Value, guess?.PotId, size, what), guess), amount.Value.IsNegative));
    }

    private static Read<(PurchaseLine Line, bool BelowZero)> Refused(string fault) => Amounts.Read.Refused<(PurchaseLine, bool)>(fault);

    private static string[] Parts(string row)
    {
        char separator = Array.Find(['\t', ';', ','], row.Contains);
        return
        [
            .. (separator == default ? row.Split((char[]?)null, 3, StringSplitOptions.RemoveEmptyEntries) : row.Split(separator, 3))
                .Select(part => part.Trim().Trim('"').Replace("\"\"", "\"", StringComparison.Ordinal)),
        ];
    }

    private static string Short(string text) => text.Length <= 24 ? text : text[..24] + "...";
}

/// <summary>One line of a list of purchases.</summary>
/// <param name="Number">Its line in the text, from 1.</param>
/// <param name="Entry">What would be entered; its pot is the guess.</param>
/// <param name="Guess">The guessed pot, or null where nothing like it was bought before.</param>
public sealed record PurchaseLine(int Number, PurchaseEntry Entry, PotGuess? Guess)
{
    /// <summary>The line with a pot chosen by the person; null for the buffer.</summary>
    public PurchaseLine For(string? potId) => this with { Entry = Entry with { PotId = potId } };
}
