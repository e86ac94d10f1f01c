using System.Collections.Immutable;

namespace Payday.Core.Ledgers;

/// <summary>
/// Which movements were undone, and by which: the one place that says whether a movement stands. A movement and its
/// reverse cancel out as if neither had been, for every date.
/// </summary>
internal sealed class Reversals
{
    // By the number of what is undone: the number of what undid it. Few are, so what asks for it costs little.
    private readonly ImmutableDictionary<long, long> undoneBy;

    private Reversals(ImmutableDictionary<long, long> undoneBy) => this.undoneBy = undoneBy;

    /// <summary>Nothing was undone.</summary>
    public static Reversals None { get; } = new(ImmutableDictionary<long, long>.Empty);

    /// <summary>Whether nothing was undone.</summary>
    public bool IsEmpty => undoneBy.IsEmpty;

    /// <summary>The numbers of what was undone and of what undid it.</summary>
    public HashSet<long> Numbers => [.. undoneBy.Keys, .. undoneBy.Values];

    /// <summary>By the numbers of movements that undo others.</summary>
    /// <param name="reverses">The number of each, and of the one that it undoes.</param>
    public static Reversals Of(IEnumerable<(long Number, long Undone)> reverses) =>
        new(None.undoneBy.SetItems(reverses.Select(pair => KeyValuePair.Create(pair.Undone, pair.Number))));

    /// <summary>Those, and what further movements undo.</summary>
    public Reversals With(IEnumerable<Movement> added)
    {
        ImmutableDictionary<long, long> more = undoneBy.SetItems(added
            .Where(movement => movement.Reverses is not null)
            .Select(movement => KeyValuePair.Create(movement.Reverses!.Value, movement.Number)));
        return more == undoneBy ? this : new(more);
    }

    /// <summary>Whether a movement is neither undone nor the undoing of another.</summary>
    public bool Stands(Movement movement) => movement.Reverses is null && !undoneBy.ContainsKey(movement.Number);

    /// <summary>The number of the movement that undid another; null where it stands, or undoes one itself.</summary>
    public long? By(long number) => undoneBy.TryGetValue(number, out long by) ? by : null;
}
