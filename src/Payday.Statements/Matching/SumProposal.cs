using System.Collections.Immutable;
using Payday.Statements.Lines;

namespace Payday.Statements.Matching;

/// <summary>A statement line that several account lines of one kind add up to, and no others of that kind do. Always a proposal.</summary>
/// <param name="Line">The bank's.</param>
/// <param name="Entries">The household's, by date.</param>
public sealed record SumProposal(StatementLine Line, ImmutableArray<AccountLine> Entries);
