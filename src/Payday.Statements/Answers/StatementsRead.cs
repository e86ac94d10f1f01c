namespace Payday.Statements.Answers;

/// <summary>The answer of <c>payday statement --read</c>.</summary>
/// <param name="Statements">A row for each statement, in the order of the files.</param>
public sealed record StatementsRead(IReadOnlyList<StatementRow> Statements);
