using Payday.Core.Amounts;

namespace Payday.Reports;

/// <summary>Where money went.</summary>
/// <param name="Name">What the person calls it.</param>
/// <param name="Amount">How much; below zero where more came back.</param>
/// <param name="Beside">What is usual, or went there last year; null where nothing can be said.</param>
/// <param name="Months">Of how many months the usual is; null where it isn't one.</param>
internal sealed record WentRow(string Name, Money Amount, Money? Beside, int? Months);
