using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Pots;

namespace Payday.Core.Counts;

/// <summary>One cash pot as a count stands. Worked out by <see cref="CountRules"/>.</summary>
/// <param name="Pot">The pot.</param>
/// <param name="Since">The day of its last count, or null where there is none.</param>
/// <param name="Before">What that count left in it, or what it began with.</param>
/// <param name="Filled">What was filled in since.</param>
/// <param name="OwedBack">What its card purchases took out since.</param>
/// <param name="Moved">What came from other pots since, less what went to them or was put right.</param>
/// <param name="StillOwed">Owed-back cash that hasn't been taken to the bank; a count by notes has it among them.</param>
/// <param name="Entry">What was entered, or null.</param>
/// <param name="Left">What is left; zero while nothing was entered.</param>
/// <param name="Spent">What was spent in cash; zero while nothing was entered or it is refused.</param>
/// <param name="Difference">Above zero what is missing, below zero what was found.</param>
/// <param name="MovesOnTo">Where what is left goes; null where it stays.</param>
/// <param name="Fault">Why it can't be counted so; null where it can.</param>
public sealed record CountRow(
    Pot Pot,
    LocalDate? Since,
    Money Before,
    Money Filled,
    Money OwedBack,
    Money Moved,
    Money StillOwed,
    CountEntry? Entry,
    Money Left,
    Money Spent,
    Money Difference,
    MoveTarget? MovesOnTo,
    CountFault? Fault)
{
    /// <summary>What the count takes as being in its wallet, though nobody said so.</summary>
    internal ToTakeUp ToTakeUp { get; init; } = ToTakeUp.Nothing;

    /// <summary>All that was in it since its last count: what stayed, what was filled in, what came from other pots.</summary>
    public Money WasIn => Before + Filled + Moved;

    /// <summary>What should be there, without what is owed back.</summary>
    public Money Expected => WasIn - OwedBack;
}
