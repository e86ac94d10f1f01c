using System.Globalization;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Text;

namespace Payday.Reports;

/// <summary>A movement in a sentence.</summary>
internal static class MovementText
{
    /// <summary>Where the money went, why, and what became of the movement since.</summary>
    public static string Sentence(Book book, Movement movement)
    {
        Movement? undoing = book.Ledger.UndoneBy(movement.Number);
        string payday = movement.Payday is { } date ? $", payday of {DateText.Weekday(date)}" : "";
        return CleanText.OneLine($"{Ends(book, movement)}. {Reason(movement)}{payday}."
            + (movement.Reverses is { } undone ? $" It undoes ledger line {Number(undone)}." : "")
            + (undoing is null ? "" : $" Undone by ledger line {Number(undoing.Number)} on {DateText.Weekday(undoing.Date)}."));
    }

    /// <summary>E.g. <c>12.50 from account: left to place to account: Gifts</c>.</summary>
    public static string Ends(Book book, Movement movement) =>
        $"{movement.Amount.ToString(book.Household.Settings.Numbers)} from {EndText.Of(book.Household, movement.From)} to {EndText.Of(book.Household, movement.To)}";

    private static string Reason(Movement movement) =>
        movement.Reason.Length == 0 ? "No reason" : char.ToUpperInvariant(movement.Reason[0]) + movement.Reason[1..];

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
