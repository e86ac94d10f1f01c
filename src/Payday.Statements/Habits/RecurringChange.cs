using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Statements.Habits;

/// <summary>Something that changed in a series.</summary>
/// <param name="Kind">What.</param>
/// <param name="Since">For a new amount the first line that has it; for a series that stopped its last line.</param>
/// <param name="Difference">For a new amount how much more it is in size, below zero for less; else zero.</param>
public sealed record RecurringChange(RecurringChangeKind Kind, LocalDate Since, Money Difference);
