using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Routines;

/// <summary>What was decided in a later step and no longer fits, so that it is proposed anew.</summary>
public abstract record Dropped : Fault
{
    /// <summary>Where the surplus goes.</summary>
    /// <param name="Placed">What was placed.</param>
    /// <param name="Left">What is left now, zero or more.</param>
    public sealed record Placements(Money Placed, Money Left) : Dropped;

    /// <summary>The notes chosen for pots.</summary>
    /// <param name="Pots">What the person calls them.</param>
    public sealed record Notes(ImmutableArray<string> Pots) : Dropped
    {
        /// <summary>Whether both are of the same pots, in the same order.</summary>
        public bool Equals(Notes? other) => other is not null && Pots.SequenceEqual(other.Pots);

        /// <summary>In line with <see cref="Equals(Notes)"/>.</summary>
        public override int GetHashCode() => Pots.Length;
    }
}
