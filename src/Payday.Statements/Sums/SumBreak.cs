using Payday.Core.Amounts;

namespace Payday.Statements.Sums;

/// <summary>Where a running balance breaks.</summary>
/// <param name="Index">The line's place among the statement's lines, from 0; what is missing stands before it.</param>
/// <param name="Place">The line of the file, from 1.</param>
/// <param name="Missing">What lines that are missing there come to.</param>
public sealed record SumBreak(int Index, int Place, Money Missing);
