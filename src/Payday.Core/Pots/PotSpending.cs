using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>Money that was spent from a pot on a day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Amount">Above zero; below zero for a refund, which takes back what was spent last.</param>
public readonly record struct PotSpending(LocalDate Date, Money Amount);
