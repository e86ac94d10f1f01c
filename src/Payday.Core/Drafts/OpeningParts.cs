using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Drafts;

/// <summary>By id: what bills or pots have at the start.</summary>
internal sealed class OpeningParts
{
    // The order of ids must not depend on a culture.
    private readonly ImmutableSortedDictionary<string, Money>.Builder parts = ImmutableSortedDictionary.CreateBuilder<string, Money>(StringComparer.Ordinal);

    /// <summary>All of them.</summary>
    public ImmutableSortedDictionary<string, Money> All => parts.ToImmutable();

    /// <summary>Adds what one has, if it has something.</summary>
    public void Add(string id, Money? has)
    {
        if (has is { } there)
        {
            parts[id] = there;
        }
    }
}
