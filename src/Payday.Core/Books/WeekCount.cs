using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Books;

/// <summary>A confirmed count of what is left of one cash pot. Its figures never change; it can be taken back as a whole.</summary>
/// <remarks>Rule (design, section 5.8): spent = expected - left; what is unaccounted for is a difference with a name.</remarks>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Date">The day of the count: all that happened up to its end is in it.</param>
/// <param name="Week">The fill day of the week it closes, on or before <paramref name="Date"/>.</param>
/// <param name="PotId">The pot.</param>
/// <param name="Since">The day of the pot's count before it, or null for the first.</param>
/// <param name="Before">What the pot had after the count before it.</param>
/// <param name="Filled">What was filled in since.</param>
/// <param name="OwedBack">What its card purchases took out since.</param>
/// <param name="Moved">What came from other pots since, less what went to them or was put right.</param>
/// <param name="Left">What was left, zero or more.</param>
/// <param name="Notes">By value in minor units: what was counted, owed-back cash included; null where an amount was given.</param>
/// <param name="Spent">What was spent in cash.</param>
/// <param name="Difference">Above zero what is missing, below zero what was found beyond what was there.</param>
/// <param name="DifferenceName">What the person calls the difference; empty where there is none.</param>
/// <param name="MovesOnTo">Where what was left went; null where it stayed.</param>
/// <param name="FirstMovement">The number of the first movement written when it was counted.</param>
/// <param name="LastMovement">The number of the last; one less than the first where nothing was filled, spent or missing.</param>
/// <param name="Move">The number of the movement by which what was left moved on, or null.</param>
public sealed record WeekCount(
    long Number,
    LocalDate Date,
    LocalDate Week,
    PotId PotId,
    LocalDate? Since,
    Money Before,
    Money Filled,
    Money OwedBack,
    Money Moved,
    Money Left,
    Notes? Notes,
    Money Spent,
    Money Difference,
    string DifferenceName,
    MoveTarget? MovesOnTo,
    long FirstMovement,
    long LastMovement,
    long? Move) : IRecord<CountTraits>
{
    /// <inheritdoc/>
    PotId? IRecord<CountTraits>.Pot => PotId;

    /// <summary>Whether it was taken back; its movements then have their reverses, and no rule looks at it.</summary>
    public bool Undone { get; init; }

    /// <summary>The number of the first count that was confirmed together with it: its own where it was the first.</summary>
    public long Together { get; init; } = Number;

    /// <summary>What was taken as being in the wallet when it was confirmed.</summary>
    public TakenUp TakenUp { get; init; } = TakenUp.Nothing;

    /// <inheritdoc/>
    public CountTraits Traits =>
        (Undone ? CountTraits.None : CountTraits.Stands)
        | (Difference.IsZero ? CountTraits.None : CountTraits.Differs)
        | (Move is null ? CountTraits.None : CountTraits.MovedOn);

    /// <summary>What should have been there.</summary>
    public Money Expected => Before + Filled - OwedBack + Moved;

    /// <summary>What was still in the pot when what moves on was gone.</summary>
    public Money Stayed => Move is null ? Left : Money.Zero(Left.Currency);
}
