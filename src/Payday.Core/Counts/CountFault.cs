using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Counts;

/// <summary>Why a pot can't be counted so, or a difference can't be cleared up.</summary>
/// <remarks>Pots are named as the person calls them.</remarks>
public abstract record CountFault : Fault
{
    /// <summary>Nothing has been counted.</summary>
    public sealed record NothingCounted : CountFault;

    /// <summary>The pot was counted for a later day.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Since">That day.</param>
    public sealed record CountedSince(string Pot, LocalDate Since) : CountFault;

    /// <summary>The day is before the household began.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Start">When it began.</param>
    public sealed record BeforeStart(LocalDate Date, LocalDate Start) : CountFault;

    /// <summary>What is left is below zero.</summary>
    /// <param name="Pot">The pot.</param>
    public sealed record LeftBelowZero(string Pot) : CountFault;

    /// <summary>The notes counted come to less than what the pot owes back, which lies among them.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="StillOwed">What it owes back.</param>
    public sealed record NotesBelowOwed(string Pot, Money StillOwed) : CountFault;

    /// <summary>More is said to be missing than is gone.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Gone">What is gone, zero or more.</param>
    /// <param name="Missing">What is said to be missing.</param>
    public sealed record MissingMoreThanGone(string Pot, Money Gone, Money Missing) : CountFault;

    /// <summary>More is left than was there.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Left">What is left.</param>
    /// <param name="Expected">What should be there.</param>
    /// <param name="StillOwed">What it owes back, which may be among it; zero or more.</param>
    public sealed record MoreThanThere(string Pot, Money Left, Money Expected, Money StillOwed) : CountFault;

    /// <summary>What is missing or was found has no name.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="IsMissing">Whether it is missing; else it was found.</param>
    public sealed record Unnamed(string Pot, bool IsMissing) : CountFault;

    /// <summary>What is left is to move on to the pot it is in.</summary>
    /// <param name="Pot">The pot.</param>
    public sealed record MovesOnToItself(string Pot) : CountFault;

    /// <summary>What is left is to move on to what there isn't.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="TargetId">What there isn't.</param>
    public sealed record NoSuchTarget(string Pot, string TargetId) : CountFault;

    /// <summary>More is gone than can be by that day, for the rest was owed back or moved since.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Most">What can be gone, zero or more.</param>
    /// <param name="Date">The day.</param>
    public sealed record MoreGoneThanCan(string Pot, Money Most, LocalDate Date) : CountFault;

    /// <summary>What was left was used since, so that it can't move on.</summary>
    /// <param name="Pot">The pot.</param>
    /// <param name="Date">The day it was counted for.</param>
    public sealed record LeftUsedSince(string Pot, LocalDate Date) : CountFault;

    /// <summary>The count has no open difference.</summary>
    /// <param name="Number">The number of the count.</param>
    public sealed record NoOpenDifference(long Number) : CountFault;

    /// <summary>What was found can't turn up.</summary>
    /// <param name="Number">The number of the count.</param>
    /// <param name="Name">What was found.</param>
    public sealed record FoundNotMissing(long Number, string Name) : CountFault;

    /// <summary>The pot is gone, so that nothing can turn up in it.</summary>
    public sealed record PotGone : CountFault;
}
