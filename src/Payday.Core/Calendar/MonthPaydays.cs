using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>The paydays that carry what is needed in a calendar month.</summary>
/// <param name="Month">The calendar month.</param>
/// <param name="Usual">The dates that are not extra, in order, each once.</param>
/// <param name="All">The same with the extra ones.</param>
/// <remarks>
/// A pay that is scheduled in the month but moved out of it by a weekend or bank holiday belongs here all the same,
/// so a date may lie shortly before or after the month. Where no pay is for the month, both are empty.
/// </remarks>
public sealed record MonthPaydays(YearMonth Month, ImmutableArray<LocalDate> Usual, ImmutableArray<LocalDate> All);
