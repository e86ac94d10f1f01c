using System.Collections.Immutable;

namespace Payday.Core.Books;

/// <summary>What a purchase or a count took as being in the wallet when it was entered, though nobody had said so.</summary>
/// <param name="Fills">Fills whose day had come, marked done by it.</param>
/// <param name="Movements">The numbers of the movements by which all of that went in the wallet.</param>
public sealed record TakenUp(ImmutableArray<FillKey> Fills, ImmutableArray<long> Movements)
{
    /// <summary>Nothing.</summary>
    public static TakenUp Nothing { get; } = new([], []);

    /// <summary>Whether it is nothing.</summary>
    public bool IsEmpty => Fills.IsEmpty && Movements.IsEmpty;

    /// <summary>Both together.</summary>
    public TakenUp With(TakenUp other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new TakenUp([.. Fills, .. other.Fills], [.. Movements, .. other.Movements]);
    }
}
