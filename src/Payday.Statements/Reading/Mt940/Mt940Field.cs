namespace Payday.Statements.Reading.Mt940;

/// <summary>A field of an MT940 message.</summary>
/// <param name="Tag">What stands between its colons; empty where a message ends.</param>
/// <param name="Value">All its lines, with <c>\n</c> between them.</param>
/// <param name="Place">The line of the file where it begins.</param>
internal readonly record struct Mt940Field(string Tag, string Value, int Place);
