namespace Payday.Statements.Files;

/// <summary>Which columns hold dates and amounts, counted from 0.</summary>
/// <param name="Date">The booking date.</param>
/// <param name="Amount">The amount; what came in where there is an <paramref name="Out"/>.</param>
/// <param name="Out">What went out, where that stands in a column of its own.</param>
/// <param name="Direction">A word that says which way it went, where amounts have no sign.</param>
/// <param name="Balance">The balance after each line.</param>
public sealed record CsvColumns(int Date, int Amount, int? Out = null, int? Direction = null, int? Balance = null);
