using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>What came in. Worked out by <see cref="IncomeRules"/>.</summary>
/// <param name="Lines">A line for each source that pays on the day or whose pay is there early or late, then one-offs.</param>
/// <param name="CarriedOver">What was still without a purpose from before; below zero where more was placed than there was.</param>
/// <param name="CameIn">The sum of the lines.</param>
/// <param name="Overdraft">What pays off an overdraft, before anything is placed.</param>
/// <param name="Buffer">What the account's buffer gives.</param>
public sealed record IncomeStep(ImmutableArray<IncomeLine> Lines, Money CarriedOver, Money CameIn, OverdraftPayoff Overdraft, BufferHelp Buffer)
{
    /// <summary>What there is without the buffer.</summary>
    public Money Own => CameIn + CarriedOver;

    /// <summary>What of it is there to be placed, once an overdraft has its part.</summary>
    public Money Free => Own - Overdraft.Amount;

    /// <summary>All that is to be placed.</summary>
    public Money ToPlace => Free + Buffer.Amount;
}

/// <summary>One income.</summary>
/// <param name="SourceId">The source, or null for a one-off.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Expected">What was expected; zero for a one-off, and for a source that doesn't pay on this day.</param>
/// <param name="Amount">What came.</param>
/// <param name="Changed">Whether the person changed it.</param>
public sealed record IncomeLine(SourceId? SourceId, string Name, Money Expected, Money Amount, bool Changed)
{
    /// <summary>How many pays of the source are there on this day: 1 as a rule, 0 for one that is early or late and for a one-off.</summary>
    public int Pays { get; init; }
}
