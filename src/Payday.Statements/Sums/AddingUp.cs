using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Sums;

/// <summary>Whether a statement adds up: opening + booked lines = closing.</summary>
/// <param name="AddsUp">Null where it can't be known, as a balance is missing.</param>
/// <param name="Sum">The sum of the booked lines.</param>
/// <param name="Expected">The closing balance that opening and lines make; null where there is no opening balance.</param>
/// <param name="Breaks">The first line that the running balance doesn't lead to; null where there is none or no such column.</param>
public sealed record AddingUp(bool? AddsUp, Money Sum, Money? Expected, SumBreak? Breaks)
{
    /// <summary>Adds a statement up.</summary>
    public static AddingUp Of(Statement statement)
    {
        ArgumentNullException.ThrowIfNull(statement);
        Money sum = Money.Sum(statement.Lines.Select(line => line.Amount), statement.Currency);
        Money? expected = statement.Opening is { } opening && opening.Amount.Currency == statement.Currency ? opening.Amount + sum : null;
        SumBreak? breaks = BreakIn(statement);
        bool? addsUp = statement is { Opening: not null, Closing: { } closing }
            ? expected == closing.Amount && breaks is null
            : breaks is null ? null : false;
        return new AddingUp(addsUp, sum, expected, breaks);
    }

    // A line that is left out breaks the running balance at the next one: there it must be looked for.
    private static SumBreak? BreakIn(Statement statement)
    {
        for (int i = 1; i < statement.Lines.Length; i++)
        {
            if (statement.Lines[i - 1].BalanceAfter is { } before && statement.Lines[i].BalanceAfter is { } after
                && (Int128)before.MinorUnits + statement.Lines[i].Amount.MinorUnits != after.MinorUnits)
            {
                return new SumBreak(i, statement.Lines[i].Place, after - before - statement.Lines[i].Amount);
            }
        }

        return null;
    }
}
