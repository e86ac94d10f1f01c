namespace Payday.Statements.Reading.Csv;

/// <summary>An amount beside a word, outside the table.</summary>
/// <param name="MinorUnits">The amount.</param>
/// <param name="Line">The line of the file.</param>
internal sealed record CsvLabel(long MinorUnits, int Line);
