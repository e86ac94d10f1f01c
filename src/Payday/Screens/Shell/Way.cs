namespace Payday.Screens.Shell;

/// <summary>Where a key leads. One of the nested cases.</summary>
internal abstract record Way
{
    private Way()
    {
    }

    /// <summary>The same screen.</summary>
    public static Way Stay { get; } = new Stays();

    /// <summary>One level back.</summary>
    public static Way Back { get; } = new Goes();

    /// <summary>Out of the program.</summary>
    public static Way Quit { get; } = new Quits();

    /// <summary>The same screen.</summary>
    public sealed record Stays : Way;

    /// <summary>One level back.</summary>
    public sealed record Goes : Way;

    /// <summary>Out of the program.</summary>
    public sealed record Quits : Way;

    /// <summary>To another screen, from which Esc leads back here.</summary>
    public sealed record To(Screen Screen) : Way;

    /// <summary>To another screen in the place of this one.</summary>
    public sealed record Instead(Screen Screen) : Way;

    /// <summary>To a screen with nothing behind it: it is the first one from now on.</summary>
    public sealed record Afresh(Screen Screen) : Way;

    /// <summary>One level back, where it is said what was done.</summary>
    /// <param name="Message">What the screen there says then.</param>
    public sealed record Done(string Message) : Way;

    /// <summary>All the way back to the first screen.</summary>
    /// <param name="Message">What the first screen says then.</param>
    public sealed record Home(string Message) : Way;

    /// <summary>To whatever screen a goal is.</summary>
    public sealed record Visit(Goal Goal) : Way;

    /// <summary>The same screen, which says something.</summary>
    public sealed record Says(string Message) : Way;

    /// <summary>A cell is edited.</summary>
    public sealed record Edit(CellEdit Cell) : Way;
}
