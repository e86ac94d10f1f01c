using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What goes in each pot. Worked out by <see cref="PotRules"/>.</summary>
/// <param name="Rows">A row a pot, in household order.</param>
/// <param name="Total">All that goes in.</param>
/// <param name="Cut">What the proposals were cut by because it doesn't fit.</param>
public sealed record PotsStep(ImmutableArray<PotRow> Rows, Money Total, Money Cut);

/// <summary>What goes in a pot.</summary>
/// <param name="Pot">The pot.</param>
/// <param name="HasNow">What it has: in its place, and kept back for it.</param>
/// <param name="Wanted">What its kind asks for.</param>
/// <param name="Proposed">What is proposed: what it wants, less any cut.</param>
/// <param name="Fill">What goes in.</param>
/// <param name="Changed">Whether the person changed it.</param>
/// <param name="Why">The reason of the proposal, in a few words.</param>
public sealed record PotRow(Pot Pot, Money HasNow, Money Wanted, Money Proposed, Money Fill, bool Changed, string Why)
{
    /// <summary>For a sinking pot, how far it is; null for others.</summary>
    public SinkingState? Sinking { get; init; }

    /// <summary>What the proposal was cut by.</summary>
    public Money Cut => Wanted - Proposed;

    /// <summary>Whether the person has to say what becomes of the pot; until then nothing is proposed.</summary>
    public bool Asks => Sinking?.Stage is SinkingStage.Bought or SinkingStage.PastItsDate;
}
