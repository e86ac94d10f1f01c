using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>Card purchases pasted from elsewhere: a line each with date, amount and text.</summary>
/// <param name="Lines">The lines that were read, in their order.</param>
/// <param name="Faults">What could not be read, in its order.</param>
public sealed record PurchaseList(ImmutableArray<PurchaseLine> Lines, ImmutableArray<ListFault> Faults)
{
    // A year of purchases has some thousand lines; more is another file by mistake.
    internal const int MostLines = 10_000;

    /// <summary>The lines whose pot nobody knows yet.</summary>
    public IEnumerable<PurchaseLine> Open => Lines.Where(line => line.IsOpen);

    /// <summary>Reads a list and guesses each line's pot from earlier purchases.</summary>
    /// <param name="book">The book, whose way to write numbers the amounts have unless only another reads them.</param>
    /// <param name="readings">The rows as each separator splits them; the one by which most rows can be read is taken, of equals the first.</param>
    /// <param name="otherwise">Splits a row by another separator where the one that was taken doesn't; else gives it back as it is.</param>
    /// <param name="today">The date: no purchase is after it, and a date without a year is the latest such day.</param>
    /// <returns>
    /// A line for each row that has one date, one amount and a text, in whatever order. A first row of words alone is a heading
    /// where others can be read. Amounts may all be below zero, as a bank's list has them; where only some are, those of the
    /// sign that fewer have are money that came in.
    /// </returns>
    public static PurchaseList Read(Book book, IEnumerable<ImmutableArray<ListRow>> readings, Func<ListRow, ListRow> otherwise, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(otherwise);
        ImmutableArray<ListRow> best = [];
        int most = -1;
        foreach (ImmutableArray<ListRow> rows in readings)
        {
            if (rows.Length > MostLines)
            {
                return new PurchaseList([], [new ListFault.TooManyLines(rows.Length, MostLines)]);
            }

            int read = PurchaseRows.Read(book.Household, rows, today).Lines.Length;
            (best, most) = read > most ? (rows, read) : (best, most);
        }

        var guesses = new PotGuesses(book);
        PurchaseList list = PurchaseRows.Read(book.Household, best.Select(otherwise), today);
        return list with { Lines = [.. list.Lines.Select(line => Guessed(line, guesses.For(line.Entry.What)))] };
    }

    /// <summary>Enters the purchases of a list, all or none.</summary>
    /// <param name="book">The book.</param>
    /// <param name="lines">The lines, each with the pot decided on.</param>
    /// <returns>The book afterwards; or the line that can't be entered.</returns>
    public static Result<Book> Enter(Book book, IEnumerable<PurchaseLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);

        // A refund of the same day comes after what it is for.
        foreach (PurchaseLine line in lines.OrderBy(line => line.Entry.Date).ThenBy(line => line.IsRefund))
        {
            Result<Book> entered = line.IsOpen ? Result.Refused<Book>(new ListFault.NoPot())
                : Purchasing.Enter(book, line.IsRefund ? line.Entry.TurnedRound() : line.Entry);
            if (!entered.Ok)
            {
                return Result.Refused<Book>(new ListFault.AtLine(line.Number, entered.Fault));
            }

            book = entered.Value;
        }

        return Result.Of(book);
    }

    /// <summary>The list with a pot chosen for a line; null for the buffer. The shop's other lines take it too, but where one was chosen for them.</summary>
    /// <param name="number">The line's number; where there is no such line nothing changes.</param>
    /// <param name="potId">The pot, or null for the buffer.</param>
    public PurchaseList Choose(int number, PotId? potId)
    {
        if (Lines.FirstOrDefault(line => line.Number == number) is not { } chosen)
        {
            return this;
        }

        return this with
        {
            Lines =
            [
                .. Lines.Select(line => line == chosen ? line.For(potId)
                    : line.Choice != PotChoice.Chosen && PotGuesses.AreOfOneShop(line.Entry.What, chosen.Entry.What) ? line.With(potId, PotChoice.Alike)
                    : line),
            ],
        };
    }

    /// <summary>The list with a line over several pots; its shop's other lines stay as they are.</summary>
    /// <param name="number">The line's number; where there is no such line nothing changes.</param>
    /// <param name="parts">The parts as <see cref="PurchaseParts"/> takes them, above zero also where the line is a refund.</param>
    /// <returns>The list; or why it can't be, where they don't add up to the line.</returns>
    public Result<PurchaseList> Split(int number, IReadOnlyList<(PotId? PotId, Money? Amount)> parts)
    {
        if (Lines.FirstOrDefault(line => line.Number == number) is not { } split)
        {
            return Result.Of(this);
        }

        return PurchaseParts.Of(parts, split.Entry.Total)
            .Map(all => this with { Lines = Lines.Replace(split, split with { Entry = split.Entry.With(all), Choice = PotChoice.Chosen }) });
    }

    /// <summary>The list of a card that is a debt, or of the account.</summary>
    /// <param name="card">The debt; null for the account.</param>
    public PurchaseList By(DebtId? card) => this with { Lines = [.. Lines.Select(line => line with { Entry = line.Entry with { Card = card } })] };

    /// <summary>The list without a line, whether it was read or not; null where it has none of that number.</summary>
    public PurchaseList? Without(int number) => Lines.Any(line => line.Number == number) || Faults.Any(fault => IsAt(fault, number))
        ? new PurchaseList(Lines.RemoveAll(line => line.Number == number), Faults.RemoveAll(fault => IsAt(fault, number)))
        : null;

    private static bool IsAt(ListFault fault, int number) => fault is ListFault.AtLine line && line.Number == number;

    private static PurchaseLine Guessed(PurchaseLine line, PotGuess? guess) =>
        guess is null ? line : new PurchaseLine(line.Number, line.Entry with { PotId = guess.PotId }, guess) { IsRefund = line.IsRefund };
}
