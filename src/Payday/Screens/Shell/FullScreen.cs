using Payday.Screens.Terminals;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.ViewBase;

namespace Payday.Screens.Shell;

/// <summary>Runs the screens on the terminal.</summary>
internal static class FullScreen
{
    /// <summary>Whether there is a terminal to show a screen on; one that calls itself dumb can't move its cursor.</summary>
    public static bool HasTerminal => IsAtTerminal && !IsDumb;

    /// <summary>Whether there is a terminal that calls itself dumb.</summary>
    public static bool HasPlainTerminal => IsAtTerminal && IsDumb;

    private static bool IsAtTerminal => !Console.IsInputRedirected && !Console.IsOutputRedirected;

    private static bool IsDumb => Environment.GetEnvironmentVariable("TERM") == "dumb";

    private const int BetweenGlances = 2000;

    // POSIX.1-2017, 8.2: the first that is set decides.
    private static readonly string[] LocaleVariables = ["LC_ALL", "LC_MONETARY", "LANG"];

    /// <summary>The locale of money, from which a region is known; null for none.</summary>
    public static string? Locale => LocaleVariables.Select(Environment.GetEnvironmentVariable).FirstOrDefault(value => !string.IsNullOrEmpty(value));

    /// <summary>Shows a screen, and those it leads to, until the person leaves.</summary>
    /// <remarks>However it ends, also with a fault, the terminal is the shell's again, and no thread of it is left.</remarks>
    /// <param name="first">The screen.</param>
    /// <param name="lead">Says which screen a goal is.</param>
    /// <param name="standing">A sentence that stands on every screen; null or empty for none.</param>
    /// <param name="glance">Looks every few seconds at what may change <paramref name="standing"/>, and says whether it did; null for nothing.</param>
    public static void Run(Screen first, Func<Goal, Way> lead, Func<string>? standing = null, Func<bool>? glance = null)
    {
        TerminalModes.Keep();

        // Before anything changes the terminal: with the first of these the runtime notes what it restores at its own end.
        using var ending = new Ending();
        try
        {
            Run(ending, first, lead, standing, glance);
        }
        catch
        {
            // The library gave back what it could; where it had a fault itself, that may be nothing.
            TerminalModes.RestoreAll();
            throw;
        }

        // Once more when all is over: the runtime changes the keys' codes again where a child ended, or the program came
        // back from the background, just as the screens were being left.
        TerminalModes.LeaveTheKeysAlone();
    }

    private static void Run(Ending ending, Screen first, Func<Goal, Way> lead, Func<string>? standing, Func<bool>? glance)
    {
        var keyboard = new KeyboardInput();
        ending.Wake = keyboard.Tell;
        Application.MaximumIterationsPerSecond = InputWaits.MostPerSecond;

        // The terminal's own sixteen colours: the person chose them, and they take a third of the bytes.
        Driver.Force16Colors = true;
        using var looks = new InputWaits(keyboard);
        using IApplication app = LibraryApplication.Create(keyboard);
        try
        {
            Run(app, keyboard, looks, ending, first, lead, standing, glance);
        }
        finally
        {
            // The application waits for the keyboard's thread as it ends, also where it ends with a fault.
            keyboard.End();
        }
    }

    private static void Run(IApplication app, KeyboardInput keyboard, InputWaits looks, Ending ending, Screen first, Func<Goal, Way> lead, Func<string>? standing, Func<bool>? glance)
    {
        ending.HoldHere();
        app.Init("ansi");
        ending.HoldHere();
        TerminalModes.LeaveTheMouseAlone(app.Driver!);
        app.Iteration += (_, _) => BeforeLook(app, keyboard, looks, ending);
        using var view = new ShellView(first, lead, Look.For(Environment.GetEnvironmentVariable), standing);
        if (glance is not null)
        {
            var everyFewSeconds = new NowAndThen(BetweenGlances, glance);
            app.Iteration += (_, _) => Glance(view, everyFewSeconds);
        }

        // The terminal's title stays the shell's: the library would leave it empty.
        view.Border.Settings &= ~BorderSettings.TerminalTitle;
        app.Run(view);
        TerminalModes.UsualCursorShape(app.Driver!);
        TerminalModes.LeaveTheKeysAlone(app.Driver!);
    }

    private static void Glance(ShellView view, NowAndThen everyFewSeconds)
    {
        if (everyFewSeconds.Ask())
        {
            view.SetNeedsDraw();
        }
    }

    private static void BeforeLook(IApplication app, KeyboardInput keyboard, InputWaits looks, Ending ending)
    {
        if (!looks.Wait())
        {
            Ending.TerminalGone();
        }

        keyboard.ThrowIfFaulty();
        ending.HoldHere();

        // The library sends the cursor again with every look once it has moved; sending it once is enough.
        app.Driver?.SetCursorNeedsUpdate(false);
    }
}
