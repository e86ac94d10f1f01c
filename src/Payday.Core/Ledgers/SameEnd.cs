using System.Runtime.CompilerServices;

namespace Payday.Core.Ledgers;

/// <summary>An end as the object that it is: a ledger that is read has few ends, each the same object in all its movements.</summary>
/// <param name="end">The end.</param>
/// <remarks>
/// Told apart in a fraction of the time that the fields of two ends take. Equal ends may be several objects, so what is
/// gathered by these is brought together by the ends themselves. A dictionary calls the methods of a struct as they
/// stand, where it would look up those of a comparer each time.
/// </remarks>
internal readonly struct SameEnd(LedgerEnd end) : IEquatable<SameEnd>
{
    /// <summary>The end.</summary>
    public LedgerEnd End => end;

    /// <inheritdoc/>
    public bool Equals(SameEnd other) => ReferenceEquals(end, other.End);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SameEnd other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(end);
}
