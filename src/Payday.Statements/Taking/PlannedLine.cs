using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Statements.Lines;
using Payday.Statements.Matching;

namespace Payday.Statements.Taking;

/// <summary>A line of the bank's that no taking has yet, or has left, with what it is or might become.</summary>
/// <param name="Key">What it is known by, in this file and the next; see <see cref="Sums.LineKey"/>.</param>
/// <param name="Line">The line.</param>
/// <param name="State">How it stands to the book.</param>
/// <param name="Partners">What it is where it is matched or waits; what it may be where that is unclear, the likeliest first.</param>
/// <param name="Looks">What it looks like where nothing is known of it.</param>
/// <param name="Proposal">What it might become; null where nothing beats the margin.</param>
public sealed record PlannedLine(
    string Key, StatementLine Line, PlannedState State, ImmutableArray<Partner> Partners, LeftoverKind Looks, Proposal? Proposal)
{
    /// <summary>Its place among the lines that are not matched, from 1; 0 for one that is.</summary>
    public int Number { get; init; }

    /// <summary>Whether an earlier taking had it and left it.</summary>
    public bool WasLeft { get; init; }

    /// <summary>What the person chose for it; null where nothing was said.</summary>
    public Proposal? Choice { get; init; }

    /// <summary>What becomes of it as things stand; null where it is left.</summary>
    public Proposal? Effective => Choice is { } choice ? choice is { Target.Use: LineUse.Leave, Lines.IsEmpty: true } ? null : choice
        : Proposal is { IsSure: true } sure && sure.Target.Use != LineUse.Leave ? sure
        : null;
}
