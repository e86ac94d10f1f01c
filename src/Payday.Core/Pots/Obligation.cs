using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>Something that has to be paid.</summary>
/// <param name="Name">What the person calls it; empty where more was placed before than there was.</param>
/// <param name="Due">By when.</param>
/// <param name="Amount">How much, zero or more.</param>
/// <param name="Kind">How it ranks.</param>
public sealed record Obligation(string Name, LocalDate Due, Money Amount, ObligationKind Kind)
{
    /// <summary>Whether it is to make good what is below zero: a bill paid beyond what was held for it, or what was placed beyond what there was.</summary>
    public bool IsOverdrawn { get; init; }
}

/// <summary>How an obligation ranks when money lacks, the first kind before the next.</summary>
/// <remarks>Shelter and utilities come before all else: common practice, no source.</remarks>
public enum ObligationKind
{
    /// <summary>A bill that keeps the household going.</summary>
    EssentialBill,

    /// <summary>Any other bill.</summary>
    Bill,

    /// <summary>A debt's minimum.</summary>
    Minimum,

    /// <summary>A pot's fill.</summary>
    Pot,
}
