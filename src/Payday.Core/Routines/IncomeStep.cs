using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Routines;

/// <summary>What came in.</summary>
/// <param name="Lines">A line for each source that pays on the day, then one-offs.</param>
/// <param name="CarriedOver">What was still waiting for a job from before.</param>
/// <param name="CameIn">The sum of the lines.</param>
public sealed record IncomeStep(ImmutableArray<IncomeLine> Lines, Money CarriedOver, Money CameIn)
{
    /// <summary>All that is to be given a job.</summary>
    public Money ToPlace => CameIn + CarriedOver;
}

/// <summary>One income.</summary>
/// <param name="SourceId">The source, or null for a one-off.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Expected">What was expected; zero for a one-off.</param>
/// <param name="Amount">What came.</param>
/// <param name="Changed">Whether the person changed it.</param>
public sealed record IncomeLine(string? SourceId, string Name, Money Expected, Money Amount, bool Changed);
