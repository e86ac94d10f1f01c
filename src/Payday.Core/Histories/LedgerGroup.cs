using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Ledgers;
using Payday.Core.Undo;

namespace Payday.Core.Histories;

/// <summary>What was done at one time, with the movements that it wrote.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Entry">What was entered, where it is one thing that can be pointed at; of several fills or counts that were entered together the first.</param>
/// <param name="Date">Its day.</param>
/// <param name="Movements">Its movements in order, at least one; of what was undone those that undid it too.</param>
public sealed record LedgerGroup(LedgerGroupKind Kind, BookEntry? Entry, LocalDate Date, ImmutableArray<Movement> Movements)
{
    /// <summary>The number of its first movement, by which it is known.</summary>
    public long Number => Movements[0].Number;
}

/// <summary>The sorts of what was done.</summary>
public enum LedgerGroupKind
{
    /// <summary>What was there when the household began, or when a pot or debt did.</summary>
    Opening,

    /// <summary>A payday was closed.</summary>
    Payday,

    /// <summary>Something was entered between paydays.</summary>
    Entry,

    /// <summary>Something was undone: what it had written, and what undid it.</summary>
    Undone,

    /// <summary>A movement that belongs to nothing else.</summary>
    Alone,
}
