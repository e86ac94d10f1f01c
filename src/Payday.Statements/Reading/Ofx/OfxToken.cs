namespace Payday.Statements.Reading.Ofx;

/// <summary>A piece of an OFX text.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">The tag's name in upper case.</param>
/// <param name="Value">The value behind an opening tag, without blanks around it; empty for none.</param>
/// <param name="Place">Where in the text it begins.</param>
internal readonly record struct OfxToken(OfxTokenKind Kind, string Name, string Value, int Place);
