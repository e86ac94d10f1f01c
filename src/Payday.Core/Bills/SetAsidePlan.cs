using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Bills;

/// <summary>What each payday sets aside for bills.</summary>
/// <param name="Rows">One for each payday, in order.</param>
/// <param name="Late">What no plan can pay on time, in date order; empty where all can be.</param>
public sealed record SetAsidePlan(ImmutableArray<SetAsideRow> Rows, ImmutableArray<LateDue> Late);

/// <summary>One payday of a plan.</summary>
/// <param name="Date">The payday.</param>
/// <param name="Due">
/// What falls due from this payday to the day before the next, after the last payday without end; the first row
/// also has what fell due before it.
/// </param>
/// <param name="SetAside">What this payday sets aside, zero or more.</param>
/// <param name="HeldAfter">
/// What is held once all of that is paid. Never below zero, for nothing less can be held: what could not be paid on
/// time is in <see cref="SetAsidePlan.Late"/>, and the next paydays make up for it first.
/// </param>
public readonly record struct SetAsideRow(LocalDate Date, Money Due, Money SetAside, Money HeldAfter);

/// <summary>A due that can't be paid in full on its date, whatever is set aside.</summary>
/// <param name="Due">The due.</param>
/// <param name="Short">What is missing on its date, above zero and at most its amount.</param>
public sealed record LateDue(Due Due, Money Short);
