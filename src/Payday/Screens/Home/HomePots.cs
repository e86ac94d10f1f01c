using System.Globalization;
using NodaTime;
using Payday.Charts;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Status;
using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Home;

/// <summary>All pots and debts, each with a bar.</summary>
internal static class HomePots
{
    private const int LeastBar = 6;
    private const int MostBar = 12;
    private const int LongestName = 18;

    // A hundred with its sign, and blanks between the parts.
    private const int PercentWidth = 5;
    private const int Gaps = 4;

    // In place of the bar of a pot that no payday has filled: what it has is no part of anything.
    private static readonly string[] NoFill = ["no fill yet", "no fill", ""];

    /// <summary>The pots.</summary>
    public static IEnumerable<FrameLine> Lines(Book book, LocalDate today, int width)
    {
        Row[] rows = [.. PotGlance.Of(book, today).Select(pot => new Row(pot.Pot.Name, pot.Has, (pot.Has, pot.Whole), pot.HasTarget ? pot.Percent : null))];
        return rows.Length == 0 ? [] : [FrameLine.Headed(width, "Pots"), .. Grid.Lay([.. Pieces(rows, book, width)], width)];
    }

    /// <summary>The debts: what is owed, and how much of it was paid since the start.</summary>
    public static IEnumerable<FrameLine> Debts(Book book, int width)
    {
        Row[] rows = [.. DebtGlance.Of(book).Select(debt => new Row(debt.Debt.Name, debt.Balance, (debt.Paid, debt.AtStart), debt.Percent))];
        return rows.Length == 0 ? [] : [FrameLine.Headed(width, "Debts, and how much of each is paid"), .. Grid.Lay([.. Pieces(rows, book, width)], width)];
    }

    private static IEnumerable<FrameLine> Pieces(Row[] rows, Book book, int width)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        int room = Grid.Room(width).Width;
        int amounts = rows.Max(row => TextColumns.Width(row.Amount.ToString(style)));
        int names = Math.Clamp(rows.Max(row => TextColumns.Width(row.Name)), 1, Math.Clamp(room - amounts - PercentWidth - Gaps - LeastBar, 1, LongestName));
        int bar = Math.Clamp(room - names - amounts - PercentWidth - Gaps, 1, MostBar);
        foreach (Row row in rows)
        {
            string percent = row.Percent is { } share ? share.ToString(CultureInfo.InvariantCulture) + " %" : "";
            yield return new FrameLine(
            [
                new Span(" " + TextColumns.PadRight(TextColumns.Truncate(row.Name, names), names) + " " + TextColumns.PadLeft(row.Amount.ToString(style), amounts) + " ", Ink.Plain),
                row.Bar.Whole.IsZero ? new Span(TextColumns.PadRight(NoFill.First(text => text.Length <= bar), bar), Ink.Quiet) : new Span(Bars.Of(row.Bar.Part, row.Bar.Whole, bar), Ink.Bar),
                new Span(TextColumns.PadLeft(percent, PercentWidth), Ink.Quiet),
            ]);
        }
    }

    private sealed record Row(string Name, Money Amount, (Money Part, Money Whole) Bar, int? Percent);
}
