using System.Collections.Immutable;

namespace Payday.Screens.Setup.Forms;

/// <summary>A field of a form as it stands.</summary>
/// <param name="Label">What it is called.</param>
/// <param name="Help">What it is for.</param>
/// <param name="Shown">What stands there; empty for nothing.</param>
/// <param name="Typed">The same, to be changed.</param>
/// <param name="MostTyped">How many characters can be typed.</param>
/// <param name="IsMissing">Whether it is needed and empty.</param>
/// <param name="Locked">Why it can't be changed now, or null.</param>
/// <param name="Choices">What can be chosen; empty where it is typed.</param>
/// <param name="Chosen">Which of the choices stands there; below zero for none.</param>
internal sealed record FormRow(
    string Label, string Help, string Shown, string Typed, int MostTyped, bool IsMissing, string? Locked, ImmutableArray<string> Choices, int Chosen);
