using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>A letter, or a sign, that means the same on every screen.</summary>
/// <param name="Character">What is typed.</param>
/// <param name="Meaning">What it does, wherever it does something.</param>
internal sealed record Letter(char Character, string Meaning)
{
    /// <summary>The letter as a key of a screen.</summary>
    /// <param name="label">As in <see cref="Binding"/>.</param>
    /// <param name="help">What it does there, in a sentence.</param>
    /// <param name="act">Does it.</param>
    public Binding Does(string label, string help, Func<Way> act) => new(new Key(Character), Character.ToString(), label, help, act) { Letter = this };
}
