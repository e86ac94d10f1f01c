namespace Payday.Screens.Setup.Fields;

/// <summary>One of the values that a field can have.</summary>
/// <param name="Label">What the person reads.</param>
/// <param name="Value">What the draft holds; null leaves the member out.</param>
internal sealed record Choice<T>(string Label, T Value);
