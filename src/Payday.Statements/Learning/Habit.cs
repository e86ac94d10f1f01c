using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Lines;

namespace Payday.Statements.Learning;

/// <summary>What is spent again and again at one place, or on one pot, without coming round on days of its own.</summary>
/// <param name="Name">Whom it went to, or the pot.</param>
/// <param name="PerWeek">A week of it; null where fewer than three weeks are whole.</param>
/// <param name="PerMonth">A month of it; null where fewer than three months are whole.</param>
/// <param name="Lines">Its lines, refunds among them.</param>
public sealed record Habit(string Name, SpendingSummary? PerWeek, SpendingSummary? PerMonth, ImmutableArray<StatementLine> Lines)
{
    /// <summary>Whether something is spent in half the weeks or more.</summary>
    public bool IsWeekly => PerWeek is { Median.IsPositive: true };

    /// <summary>Whether something is spent in half the weeks or half the months: else it comes up now and then, and is no habit.</summary>
    public bool IsUsual => IsWeekly || PerMonth is { Median.IsPositive: true };

    /// <summary>What a usual year takes of it, fifty-two weeks or twelve months; by it habits are ordered.</summary>
    internal long YearInMinorUnits => Math.Max((PerWeek?.Median.MinorUnits ?? 0) * 52, (PerMonth?.Median.MinorUnits ?? 0) * 12);

    /// <summary>All that was spent of it.</summary>
    public Money Total => -Money.Sum(Lines.Select(line => line.Amount), Lines[0].Amount.Currency);
}
