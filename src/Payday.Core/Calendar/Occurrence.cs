using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>One time that a schedule comes round.</summary>
/// <param name="Scheduled">The date by the schedule alone.</param>
/// <param name="Date">The date after a move off a weekend or bank holiday: when money is there, or due.</param>
public readonly record struct Occurrence(LocalDate Scheduled, LocalDate Date);
