using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Payday.Screens.Shell;

/// <summary>Ends the program when a signal asks for it or the terminal is gone, with the terminal as it was before.</summary>
/// <remarks>
/// Every decision is stored as it is made, so there is nothing to save. The process exits from here: winding the library
/// down would wait for a terminal that may be gone.
/// </remarks>
internal sealed class Ending : IDisposable
{
    // A shell reports a program that a signal ended as 128 and the signal's number (POSIX.1-2017, XCU 2.8.2).
    private const int BySignal = 128;
    private const int HangUp = 1;
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(300);

    // On a busy machine, or while the library makes the terminal its own, the next look may be far: giving the terminal back
    // before it would come to nothing.
    private static readonly TimeSpan MostPatience = TimeSpan.FromSeconds(20);

    // Nothing to dispose of: a signal that comes as the screens end may still wait on it.
    private readonly TaskCompletionSource held = new();
    private readonly PosixSignalRegistration[] registrations;
    private volatile bool ending;

    /// <summary>Hears of signals from here on.</summary>
    public Ending() =>
        registrations = [On(PosixSignal.SIGHUP, HangUp), On(PosixSignal.SIGINT, 2), On(PosixSignal.SIGQUIT, 3), On(PosixSignal.SIGTERM, 15)];

    /// <summary>Brings the screens on to their next look.</summary>
    public Action Wake { private get; set; } = () => { };

    /// <summary>Between two looks nothing is half drawn or half stored: here the screens stand still once the end has begun.</summary>
    public void HoldHere()
    {
        if (ending)
        {
            held.TrySetResult();
            Thread.Sleep(Timeout.Infinite);
        }
    }

    /// <summary>The terminal is gone.</summary>
    public static void TerminalGone() => Exit(HangUp);

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (PosixSignalRegistration registration in registrations)
        {
            registration.Dispose();
        }
    }

    private PosixSignalRegistration On(PosixSignal signal, int number) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        ending = true;
        Wake();
        WaitForScreens();
        Exit(number);
    });

    // Where the terminal takes nothing the screens may hang on it for good.
    private void WaitForScreens()
    {
        var waited = Stopwatch.StartNew();
        while (!held.Task.Wait(Patience) && TerminalModes.TakesOutput && waited.Elapsed < MostPatience)
        {
        }
    }

    private static void Exit(int number)
    {
        TerminalModes.RestoreAll();
        Environment.Exit(BySignal + number);
    }
}
