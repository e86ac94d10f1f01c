using System.Runtime.InteropServices;

namespace Payday.Screens.Terminals;

/// <summary>When the library looks at its input next: at once when a key comes, and seldom while nobody types.</summary>
/// <remarks>The library looks a fixed number of times a second, which is either late or busy; called before each look, this waits.</remarks>
internal sealed class InputWaits : IDisposable
{
    /// <summary>More looks a second than are ever wanted: the waiting is done here.</summary>
    public const ushort MostPerSecond = 1000;

    // The library holds a lone Esc for 50 ms, as it may begin the code of another key; this often it is asked whether that is over.
    private const int AwakeMilliseconds = 100;
    private const int BetweenLooksMilliseconds = 10;

    // A new size of the terminal is told by a signal; should that stay away, it is seen no later than this.
    private const int LongestMilliseconds = 1000;

    private readonly KeyboardInput keyboard;
    private readonly PosixSignalRegistration? newSize;
    private long awakeUntil = Environment.TickCount64 + AwakeMilliseconds;
    private bool isAsleep;

    public InputWaits(KeyboardInput keyboard)
    {
        this.keyboard = keyboard;
        newSize = OperatingSystem.IsWindows() ? null : PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => keyboard.Tell());
    }

    /// <summary>Waits for the next look.</summary>
    /// <returns>Whether there still is a terminal.</returns>
    public bool Wait()
    {
        if (!isAsleep && Environment.TickCount64 >= awakeUntil)
        {
            isAsleep = true;

            // While nobody types, what the last keys left behind is collected, so that it never piles up to what the runtime
            // would let it by the size of the processor's cache.
            GC.Collect(0);
        }

        if (keyboard.Wait(isAsleep ? LongestMilliseconds : BetweenLooksMilliseconds))
        {
            isAsleep = false;
            awakeUntil = Environment.TickCount64 + AwakeMilliseconds;
        }

        return !keyboard.IsGone;
    }

    /// <inheritdoc/>
    public void Dispose() => newSize?.Dispose();
}
