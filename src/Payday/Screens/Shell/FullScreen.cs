using Terminal.Gui.App;

namespace Payday.Screens.Shell;

/// <summary>Runs the screens on the terminal.</summary>
internal static class FullScreen
{
    // The library looks at its input this often; 60 a second keeps a key under the 20 ms that a hand notices.
    private const ushort LooksPerSecond = 60;

    /// <summary>Whether there is a terminal to show anything on.</summary>
    public static bool HasTerminal => !Console.IsInputRedirected && !Console.IsOutputRedirected;

    /// <summary>Shows a screen, and those it leads to, until the person leaves.</summary>
    public static void Run(Screen first)
    {
        var look = Look.For(Environment.GetEnvironmentVariable);
        Application.MaximumIterationsPerSecond = LooksPerSecond;
        using IApplication app = Application.Create();
        app.Init("ansi");

        // The library sends the cursor again with every look once it has moved; sending it once is enough.
        app.Iteration += (_, _) => app.Driver?.SetCursorNeedsUpdate(false);
        using var view = new ShellView(first, look);
        app.Run(view);
    }
}
