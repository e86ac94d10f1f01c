namespace Payday.Screens.Shell;

/// <summary>A value that is being typed.</summary>
/// <param name="Prompt">What is asked for.</param>
/// <param name="Text">What stands there to begin with.</param>
/// <param name="Accept">Takes the text; returns what is wrong with it, or null when it was taken.</param>
internal sealed record CellEdit(string Prompt, string Text, Func<string, string?> Accept)
{
    /// <summary>How many characters a name, an amount, a date or a sentence can have at most.</summary>
    public const int Usual = 200;

    /// <summary>How many characters a path or a list can have at most.</summary>
    public const int Long = 1000;

    /// <summary>How many characters can be typed; what stands there to begin with may be longer.</summary>
    public int Most { get; init; } = Usual;

    /// <summary>Whether what is typed first goes behind what stands there, rather than in its place.</summary>
    public bool GoesOn { get; init; }

    /// <summary>What is typed next once the text was taken, such as another line; null for nothing.</summary>
    public Func<CellEdit?>? Next { get; init; }
}
