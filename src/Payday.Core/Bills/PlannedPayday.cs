using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Bills;

/// <summary>A payday to come, as set-asides see it.</summary>
/// <param name="Date">The date on which the money is there.</param>
/// <param name="Income">What is expected that day, zero or more; zero where it can't be foreseen.</param>
public readonly record struct PlannedPayday(LocalDate Date, Money Income);
