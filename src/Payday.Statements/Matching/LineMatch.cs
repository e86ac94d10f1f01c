using Payday.Statements.Lines;

namespace Payday.Statements.Matching;

/// <summary>A statement line and the account line it is.</summary>
/// <param name="Line">The bank's.</param>
/// <param name="Entry">The household's.</param>
/// <param name="Margin">By how much the best assignment beats the best one without this pair, in points of <see cref="PairScore"/>.</param>
public sealed record LineMatch(StatementLine Line, AccountLine Entry, int Margin);
