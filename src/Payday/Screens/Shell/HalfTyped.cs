namespace Payday.Screens.Shell;

/// <summary>What was typed and left with Esc: nothing of it counts, and it is there again when the same cell is changed.</summary>
internal sealed class HalfTyped
{
    // Screens are made anew each time one is led to, so that they are known by what they are about.
    private readonly Dictionary<(Type Screen, string Title, string Prompt), string> texts = [];

    /// <summary>What was left in a cell of a screen, or null.</summary>
    public string? Of(Screen screen, CellEdit cell) => texts.GetValueOrDefault((screen.GetType(), screen.Title, cell.Prompt));

    /// <summary>Keeps what was typed; a cell that holds what it held before, or nothing, has nothing to keep.</summary>
    /// <returns>Whether something is kept.</returns>
    public bool Keep(Screen screen, CellEdit cell, string text)
    {
        Forget(screen, screen.Title, cell);
        bool isTyped = text.Length > 0 && text != cell.Text;
        if (isTyped)
        {
            texts[(screen.GetType(), screen.Title, cell.Prompt)] = text;
        }

        return isTyped;
    }

    /// <summary>It was taken.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="title">Its title before: taking something may change it.</param>
    /// <param name="cell">The cell.</param>
    public void Forget(Screen screen, string title, CellEdit cell) => texts.Remove((screen.GetType(), title, cell.Prompt));
}
