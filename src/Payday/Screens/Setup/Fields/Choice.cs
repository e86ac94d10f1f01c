using System.Text.Json.Nodes;

namespace Payday.Screens.Setup.Fields;

/// <summary>One of the values that a field can have.</summary>
/// <param name="Label">What the person reads.</param>
/// <param name="Value">What the household file holds; null leaves the field out.</param>
internal sealed record Choice(string Label, JsonNode? Value);
