using System.Collections.Immutable;

namespace Payday.Statements.Matching;

/// <summary>A statement held against the account here. Each statement line stands in exactly one of the first four lists.</summary>
/// <param name="Matched">Lines whose partner is sure by the margin, in the statement's order.</param>
/// <param name="Unclear">Lines with a partner that isn't sure.</param>
/// <param name="Sums">Lines that several account lines add up to.</param>
/// <param name="Leftovers">Lines without a partner.</param>
/// <param name="Open">Account lines that nothing was matched or proposed to.</param>
public sealed record MatchResult(
    ImmutableArray<LineMatch> Matched,
    ImmutableArray<UnclearLine> Unclear,
    ImmutableArray<SumProposal> Sums,
    ImmutableArray<Leftover> Leftovers,
    ImmutableArray<OpenEntry> Open);
