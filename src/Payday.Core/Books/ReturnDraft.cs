using System.Collections.Immutable;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>What the person decides of a cash return, beyond what is planned.</summary>
public sealed record ReturnDraft
{
    /// <summary>Everything as planned.</summary>
    public static ReturnDraft AsPlanned { get; } = new();

    /// <summary>Ids of pots that stay owing this time.</summary>
    public ImmutableSortedSet<PotId> Leaves { get; init; } = [];

    /// <summary>By pot id: the notes picked by hand, by value in minor units.</summary>
    public ImmutableSortedDictionary<PotId, ImmutableSortedDictionary<long, int>> Picked { get; init; } =
        ImmutableSortedDictionary<PotId, ImmutableSortedDictionary<long, int>>.Empty;
}
