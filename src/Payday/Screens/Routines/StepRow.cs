using System.Collections.Immutable;
using Payday.Screens.Frames;
using Payday.Screens.Shell;

namespace Payday.Screens.Routines;

/// <summary>A row of a step's table.</summary>
/// <param name="Cells">One for each column.</param>
internal sealed record StepRow(ImmutableArray<string> Cells)
{
    /// <summary>The sign before it: done, changed, needs doing.</summary>
    public char Sign { get; init; } = ' ';

    /// <summary>The last cell where there is little room; null where it is the same.</summary>
    public string? LastInShort { get; init; }

    /// <summary>How it shows.</summary>
    public Ink Ink { get; init; } = Ink.Plain;

    /// <summary>What is shown below the table while the cursor is here; at most three lines.</summary>
    public ImmutableArray<string> Detail { get => DetailHere?.Invoke() ?? field; init; } = [];

    /// <summary>Works <see cref="Detail"/> out where that takes some time: it is asked for only while the cursor is here. Null where it is there.</summary>
    public Func<ImmutableArray<string>>? DetailHere { private get; init; }

    /// <summary>The rule behind its figures, in a sentence.</summary>
    public string Rule { get; init; } = "";

    /// <summary>Typing here: what is edited, or null where nothing is.</summary>
    public CellEdit? Edit { get; init; }

    /// <summary>Keys that only this row has, such as the answers to its question.</summary>
    public IReadOnlyList<Binding> Keys { get; init; } = [];

    /// <summary>Space here, or null where it does nothing.</summary>
    public Action? Tick { get; init; }

    /// <summary>What Space does here, in a word or two, where it isn't what it does in the other rows of the step; else empty.</summary>
    public string TickLabel { get; init; } = "";

    /// <summary>What is said where nothing can be typed here though it looks as if it could: why, and where it can.</summary>
    public string NoEdit { get; init; } = "";

    /// <summary>What is said where Space does nothing here.</summary>
    public string NoTick { get; init; } = "";
}
