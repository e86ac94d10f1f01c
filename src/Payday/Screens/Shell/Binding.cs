using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>A key of a screen: what it does, and how it is named wherever keys are named.</summary>
/// <param name="Key">The key.</param>
/// <param name="Name">How the key is written, e.g. <c>Enter</c>.</param>
/// <param name="Label">What it does, in a word or two, for the bottom line; empty keeps it to the help page.</param>
/// <param name="Help">What it does, in a sentence.</param>
/// <param name="Do">Does it.</param>
internal sealed record Binding(Key Key, string Name, string Label, string Help, Func<Way> Do)
{
    /// <summary>What the key means on every screen, where it is a letter; else null.</summary>
    public Letter? Letter { get; init; }
}
