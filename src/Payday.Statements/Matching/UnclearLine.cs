using System.Collections.Immutable;
using Payday.Statements.Lines;

namespace Payday.Statements.Matching;

/// <summary>A statement line that may be one of several account lines, or none: shown, not taken.</summary>
/// <param name="Line">The bank's.</param>
/// <param name="Candidates">The household's, the likeliest first.</param>
public sealed record UnclearLine(StatementLine Line, ImmutableArray<AccountLine> Candidates);
