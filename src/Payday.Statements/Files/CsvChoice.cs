namespace Payday.Statements.Files;

/// <summary>One possible reading.</summary>
/// <param name="Reads">What the text shown would then be: a date, an amount (of each row shown, parted by commas), a column's name, a currency's code.</param>
/// <param name="Profile">The answer: the file is read again with this among the profiles.</param>
public sealed record CsvChoice(string Reads, CsvProfile Profile);
