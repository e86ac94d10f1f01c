using Payday.Statements.Lines;

namespace Payday.Statements.Sums;

/// <summary>A line of a new statement beside what is known.</summary>
/// <param name="Line">The line.</param>
/// <param name="Kind">Whether it was known.</param>
/// <param name="Known">The known line it is or may be; null for a new one.</param>
public sealed record LineRepeat(StatementLine Line, RepeatKind Kind, StatementLine? Known);
