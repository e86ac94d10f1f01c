using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Habits;

/// <summary>A bill or an income that comes round, as the lines show it. A proposal: the person takes it, changes it or leaves it.</summary>
/// <param name="Name">The other side's name, as most lines write it.</param>
/// <param name="Rhythm">When it comes round.</param>
/// <param name="Usual">The lower median of the amounts since the last lasting change: an amount that occurred. Below zero goes out.</param>
/// <param name="Hold">What to hold for it, at least the usual amount in size: the usual one where it doesn't vary, else the 0.8 quantile of the last twelve. For income what can be counted on: the 0.2 quantile.</param>
/// <param name="Lines">The lines it was found in, oldest first.</param>
/// <param name="Expected">How many times it should have come from the first to the last line; its hits are the lines.</param>
public sealed record Recurring(string Name, Rhythm Rhythm, Money Usual, Money Hold, ImmutableArray<StatementLine> Lines, int Expected)
{
    /// <summary>Whether money comes in.</summary>
    public bool IsIncome => Usual.IsPositive;

    /// <summary>The usual amount above zero, whichever way it goes.</summary>
    public Money UsualSize => IsIncome ? Usual : -Usual;

    /// <summary>What to hold or count on, above zero.</summary>
    public Money HoldSize => IsIncome ? Hold : -Hold;

    /// <summary>The first line's day.</summary>
    public LocalDate First => Lines[0].Date;

    /// <summary>The last line's day.</summary>
    public LocalDate Last => Lines[^1].Date;

    /// <summary>What changed, noticed at the end of what was read.</summary>
    public ImmutableArray<RecurringChange> Changes { get; init; } = [];
}
