using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Calendar;

/// <summary>A date on which at least one source pays.</summary>
/// <param name="Date">The date on which the money is there, shifts done.</param>
/// <param name="Sources">The ids of the sources that pay, in household order, each once.</param>
/// <param name="IsExtra">
/// Whether every source paying that day has already paid its usual count in that calendar month: 4 for a weekly wage,
/// 2 for a fortnightly one, 1 for one every three weeks or more. Schedules by the month and typed-in dates are never
/// extra, not even where a bank holiday moves a pay into the month before.
/// </param>
public sealed record ScheduledPayday(LocalDate Date, ImmutableArray<string> Sources, bool IsExtra);
