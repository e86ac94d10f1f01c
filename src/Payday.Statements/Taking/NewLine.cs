using Payday.Statements.Lines;

namespace Payday.Statements.Taking;

/// <summary>A line of the bank's that is new, or was left.</summary>
/// <param name="Key">What it is known by.</param>
/// <param name="Line">The line.</param>
/// <param name="WasLeft">Whether an earlier taking left it.</param>
/// <param name="IsUnsure">Whether it may be a line that was taken, with other words.</param>
internal sealed record NewLine(string Key, StatementLine Line, bool WasLeft, bool IsUnsure);
