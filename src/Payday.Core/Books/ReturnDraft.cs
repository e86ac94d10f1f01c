using System.Collections.Immutable;

namespace Payday.Core.Books;

/// <summary>What the person decides of a cash return, beyond what is planned.</summary>
public sealed record ReturnDraft
{
    /// <summary>Everything as planned.</summary>
    public static ReturnDraft AsPlanned { get; } = new();

    /// <summary>Ids of pots that stay owing this time.</summary>
    public ImmutableSortedSet<string> Leaves { get; init; } = ImmutableSortedSet.Create<string>(StringComparer.Ordinal);

    /// <summary>By pot id: the notes picked by hand, by value in minor units.</summary>
    public ImmutableSortedDictionary<string, ImmutableSortedDictionary<long, int>> Picked { get; init; } =
        ImmutableSortedDictionary.Create<string, ImmutableSortedDictionary<long, int>>(StringComparer.Ordinal);
}
