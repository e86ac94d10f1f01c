using System.Collections.Immutable;

namespace Payday.Core.Books;

/// <summary>Things of a record by what each is of, grouped when they are first asked for: many ask for theirs.</summary>
/// <param name="all">All of them.</param>
/// <param name="keyOf">What one is of.</param>
/// <remarks>It says nothing that they don't say themselves, so any two are equal.</remarks>
internal sealed class Grouped<TKey, T>(ImmutableArray<T> all, Func<T, TKey> keyOf) : IEquatable<Grouped<TKey, T>>
{
    private ILookup<TKey, T>? known;

    /// <summary>Those of one, in their order.</summary>
    public IEnumerable<T> Of(TKey key) => (known ??= all.ToLookup(keyOf))[key];

    /// <inheritdoc/>
    public bool Equals(Grouped<TKey, T>? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Grouped<TKey, T>);

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
