using System.Collections.Immutable;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>The parts of a closed payday by pot: many pots ask for theirs, of every payday there is.</summary>
/// <remarks>It says nothing that the parts don't say themselves, so any two are equal.</remarks>
internal sealed class PartsByPot(ImmutableArray<ClosedPart> parts) : IEquatable<PartsByPot>
{
    private ILookup<PotId, ClosedPart>? known;

    /// <summary>Those of one pot, in their order.</summary>
    public IEnumerable<ClosedPart> Of(PotId potId) => (known ??= parts.ToLookup(part => part.PotId))[potId];

    /// <inheritdoc/>
    public bool Equals(PartsByPot? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PartsByPot);

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
