using Payday.Statements.Lines;

namespace Payday.Statements.Matching;

/// <summary>A statement line without a partner.</summary>
/// <param name="Line">The bank's.</param>
/// <param name="Kind">What it looks like.</param>
public sealed record Leftover(StatementLine Line, LeftoverKind Kind);
