using Payday.Core.Amounts;

namespace Payday.Statements.Habits;

/// <summary>What was spent on one thing, over weeks or months that are whole.</summary>
/// <param name="Label">What it was spent on.</param>
/// <param name="Median">The lower median of the periods, those without a line among them.</param>
/// <param name="Low">The 0.2 quantile.</param>
/// <param name="High">The 0.8 quantile.</param>
/// <param name="Periods">How many periods that is; at least three.</param>
public sealed record SpendingSummary(string Label, Money Median, Money Low, Money High, int Periods);
