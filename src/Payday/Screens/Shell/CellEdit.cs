namespace Payday.Screens.Shell;

/// <summary>A value that is being typed.</summary>
/// <param name="Prompt">What is asked for.</param>
/// <param name="Text">What stands there to begin with.</param>
/// <param name="Accept">Takes the text; returns what is wrong with it, or null when it was taken.</param>
internal sealed record CellEdit(string Prompt, string Text, Func<string, string?> Accept)
{
    /// <summary>
    /// Whether taking it does something at once, such as writing a file. Esc, which otherwise keeps what was typed,
    /// then leaves it undone.
    /// </summary>
    public bool Acts { get; init; }
}
