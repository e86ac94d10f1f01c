using System.Collections.Immutable;

namespace Payday.Store.Starts;

/// <summary>The bank's files that a household is set up from, and what became of what was found in them.</summary>
/// <param name="Files">The files; they are read anew each time, so nothing of their lines is kept.</param>
/// <param name="Taken">What was taken into the household, by its key.</param>
/// <param name="Left">What was left out, by its key.</param>
public sealed record StartStatements(ImmutableArray<StartStatement> Files, ImmutableSortedSet<string> Taken, ImmutableSortedSet<string> Left)
{
    private static readonly ImmutableSortedSet<string> NoKeys = ImmutableSortedSet.Create<string>(StringComparer.Ordinal);

    /// <summary>What of the taken was taken as a debt, by its key.</summary>
    public ImmutableSortedSet<string> Debts { get; init; } = NoKeys;

    /// <summary>None.</summary>
    public static StartStatements None { get; } = new([], NoKeys, NoKeys);

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => Files.IsEmpty && Taken.IsEmpty && Left.IsEmpty;

    /// <summary>The same with a key taken.</summary>
    public StartStatements Take(string key) => this with { Taken = Taken.Add(key), Left = Left.Remove(key), Debts = Debts.Remove(key) };

    /// <summary>The same with a key taken as a debt.</summary>
    public StartStatements TakeAsDebt(string key) => Take(key) with { Debts = Debts.Add(key) };

    /// <summary>The same with a key left.</summary>
    public StartStatements Leave(string key) => this with { Taken = Taken.Remove(key), Left = Left.Add(key), Debts = Debts.Remove(key) };

    /// <summary>The same with nothing decided of a key.</summary>
    public StartStatements Reopen(string key) => this with { Taken = Taken.Remove(key), Left = Left.Remove(key), Debts = Debts.Remove(key) };

    /// <inheritdoc/>
    public bool Equals(StartStatements? other) =>
        other is not null && Files.SequenceEqual(other.Files) && Taken.SetEquals(other.Taken) && Left.SetEquals(other.Left) && Debts.SetEquals(other.Debts);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Files.Length, Taken.Count, Left.Count, Debts.Count);
}
