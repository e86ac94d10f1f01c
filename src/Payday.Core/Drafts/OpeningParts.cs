using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Drafts;

/// <summary>By id: what bills or pots have at the start.</summary>
internal sealed class OpeningParts<TId>
    where TId : notnull
{
    private readonly ImmutableSortedDictionary<TId, Money>.Builder parts = ImmutableSortedDictionary.CreateBuilder<TId, Money>();

    /// <summary>All of them.</summary>
    public ImmutableSortedDictionary<TId, Money> All => parts.ToImmutable();

    /// <summary>Adds what one has, if it has something.</summary>
    public void Add(TId id, Money? has)
    {
        if (has is { } there)
        {
            parts[id] = there;
        }
    }
}
