using System.Collections.Immutable;
using Payday.Core.Faults;

namespace Payday.Core.Outlooks;

/// <summary>Why something can't be tried.</summary>
public abstract record OutlookFault : Fault
{
    /// <summary>It isn't written as a name and an amount.</summary>
    public sealed record NoPair : OutlookFault;

    /// <summary>No bill and no income source is called so.</summary>
    /// <param name="Name">What was named.</param>
    /// <param name="Known">What there is.</param>
    public sealed record NoSuchName(string Name, ImmutableArray<string> Known) : OutlookFault;

    /// <summary>More than one of them is called so.</summary>
    /// <param name="Name">What was named.</param>
    public sealed record TwoOfThatName(string Name) : OutlookFault;

    /// <summary>The amount is below zero.</summary>
    /// <param name="Name">What it is of.</param>
    public sealed record BelowZero(string Name) : OutlookFault;
}
