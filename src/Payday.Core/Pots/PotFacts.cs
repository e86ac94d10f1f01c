using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>What a pot's fill depends on besides its kind.</summary>
/// <param name="Balance">What the pot has before the fill; below zero when it owes.</param>
/// <param name="PutInSoFar">All that was ever put in, which a ladder counts its steps by; zero or more.</param>
/// <param name="FillDays">The fill days of the pay period, in order; there may be none.</param>
/// <param name="Payday">The payday.</param>
/// <param name="Months">
/// The calendar months that it carries a part of, with what they have so far; two where a moved pay of one month meets a
/// pay of another.
/// </param>
/// <param name="Start">When the household began.</param>
/// <param name="Sinking">For a sinking pot: how far it is; null for others.</param>
/// <param name="PaydaysLeft">
/// For a sinking pot: how many paydays there are strictly before its date from this one on; zero when there is none.
/// </param>
/// <param name="Unit">The smallest amount a fill should come in, above zero; see <see cref="PotUnit"/>.</param>
/// <param name="Numbers">How amounts are written in the reason.</param>
public sealed record PotFacts(
    Money Balance,
    Money PutInSoFar,
    ImmutableArray<LocalDate> FillDays,
    LocalDate Payday,
    ImmutableArray<MonthFills> Months,
    LocalDate Start,
    SinkingState? Sinking,
    int PaydaysLeft,
    Money Unit,
    NumberStyle Numbers);
