using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.ViewBase;

namespace Payday.Screens.Shell;

/// <summary>Runs the screens on the terminal.</summary>
internal static class FullScreen
{
    /// <summary>Whether there is a terminal to show a screen on; one that calls itself dumb can't move its cursor.</summary>
    public static bool HasTerminal =>
        !Console.IsInputRedirected && !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb";

    /// <summary>Shows a screen, and those it leads to, until the person leaves.</summary>
    /// <param name="first">The screen.</param>
    /// <param name="standing">A sentence that stands on every screen; null or empty for none.</param>
    public static void Run(Screen first, Func<string>? standing = null)
    {
        var look = Look.For(Environment.GetEnvironmentVariable);
        Application.MaximumIterationsPerSecond = Looks.MostPerSecond;

        // The terminal's own sixteen colours: the person chose them, and they take a third of the bytes.
        Driver.Force16Colors = true;
        var keyboard = new KeyboardInput();
        using IApplication app = LibraryApplication.Create(keyboard);
        app.Init("ansi");
        TerminalModes.LeaveTheMouseAlone(app.Driver!);
        using var ending = new Ending(keyboard.Tell);
        using var looks = new Looks(keyboard);
        app.Iteration += (_, _) => BeforeLook(app, looks, ending);
        using var view = new ShellView(first, look, standing);

        // The terminal's title stays the shell's: the library would leave it empty.
        view.Border.Settings &= ~BorderSettings.TerminalTitle;
        app.Run(view);
        TerminalModes.UsualCursorShape(app.Driver!);
        TerminalModes.LeaveTheKeysAlone(app.Driver!);
        keyboard.End();
    }

    private static void BeforeLook(IApplication app, Looks looks, Ending ending)
    {
        if (!looks.Wait())
        {
            Ending.TerminalGone();
        }

        ending.HoldHere();

        // The library sends the cursor again with every look once it has moved; sending it once is enough.
        app.Driver?.SetCursorNeedsUpdate(false);
    }
}
