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

    /// <summary>Reads a list and guesses each line's pot from earlier purchases.</summary>
    /// <param name="book">The book, whose way to write numbers the amounts have.</param>
    /// <param name="text">
    /// Lines of <c>2026-03-07, 12.50, Corner shop</c>. Between the three stands a tab, else a semicolon, else a comma,
    /// else blanks: with a decimal comma use one of the others. A text may stand in quotes. Empty lines are passed over. An amount below
    /// zero, as a bank's list may have it, is read without its sign.
    /// </param>
    public static PurchaseList Read(Book book, string text)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(text);
        var lines = ImmutableArray.CreateBuilder<PurchaseLine>();
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

            Read<PurchaseLine> line = Line(book, i + 1, row);
            if (line.Ok)
            {
                lines.Add(line.Value);
            }
            else
            {
                faults.Add(new PurchaseFault(i + 1, line.Fault));
            }
        }

        return new PurchaseList(lines.ToImmutable(), faults.ToImmutable());
    }

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

    private static Read<PurchaseLine> Line(Book book, int number, string row)
    {
        string[] parts = Parts(row);
        if (parts.Length < 3)
        {
            return Amounts.Read.Refused<PurchaseLine>("write date, amount and text, such as 2026-03-07, 12.50, Corner shop.");
        }

        Read<LocalDate> date = TypedDate.Parse(parts[0]);
        if (!date.Ok)
        {
            return Amounts.Read.Refused<PurchaseLine>($"'{Short(parts[0])}': {date.Fault}");
        }

        Read<Money> amount = Money.Parse(parts[1], book.Household.Currency, book.Household.Settings.Numbers);
        if (!amount.Ok)
        {
            return Amounts.Read.Refused<PurchaseLine>(amount.Fault);
        }

        if (amount.Value.IsZero)
        {
            return Amounts.Read.Refused<PurchaseLine>("the amount is zero; leave the line out.");
        }

        Money size = amount.Value.IsNegative ? -amount.Value : amount.Value;
        PotGuess? guess = PotGuess.For(book, parts[2]);
        return Amounts.Read.Of(new PurchaseLine(number, new PurchaseEntry(date.Value, guess?.PotId, size, parts[2]), guess));
    }

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
