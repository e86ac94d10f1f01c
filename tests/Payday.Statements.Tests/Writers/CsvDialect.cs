namespace Payday.Statements.Tests.Writers;

/// <summary>How a bank writes CSV.</summary>
/// <param name="Separator">Between cells.</param>
/// <param name="Mark">Before the decimals.</param>
/// <param name="Group">Between thousands; may be empty.</param>
/// <param name="Date">The pattern of dates.</param>
/// <param name="Shape">How amounts say which way they go.</param>
/// <param name="HasBalance">Whether there is a column of balances.</param>
/// <param name="NewestFirst">Which way the lines run.</param>
/// <param name="HasHeader">Whether there is a row of names.</param>
internal sealed record CsvDialect(char Separator, char Mark, string Group, string Date, AmountShape Shape, bool HasBalance, bool NewestFirst, bool HasHeader);
