namespace Payday.Manual;

/// <summary>A field of the household file, or several that belong together.</summary>
/// <param name="Names">What the file calls it, between backticks; a question mark behind says that it may be left out.</param>
/// <param name="Holds">What it holds; words of the file between backticks.</param>
internal sealed record HouseholdField(string Names, string Holds);
