using System.Runtime.InteropServices;

namespace Payday.Screens.Shell;

/// <summary>When the library looks at its input next: soon while keys come, and seldom while nobody types.</summary>
/// <remarks>
/// The library looks a fixed number of times a second, which is either late or busy. Called before each look, this
/// waits until there is something to read, so that a key is seen at once and an idle screen costs next to nothing.
/// </remarks>
internal sealed class Looks
{
    /// <summary>More looks a second than are ever wanted: the waiting is done here.</summary>
    public const ushort MostPerSecond = 1000;

    // Another thread of the library reads the input up to 20 ms after it came, and holds a lone Esc for 50 ms.
    private const int AwakeMilliseconds = 100;
    private const int BetweenLooksMilliseconds = 2;

    // A new size of the terminal is seen no later than this.
    private const int LongestMilliseconds = 100;
    private const short Readable = 0x001;
    private const short Gone = 0x008 | 0x010 | 0x020;

    private const long Asleep = 0;

    private long awakeUntil = Environment.TickCount64 + AwakeMilliseconds;

    /// <summary>Waits for the next look.</summary>
    /// <returns>Whether there still is a terminal.</returns>
    public bool Wait()
    {
        if (Environment.TickCount64 < awakeUntil)
        {
            Thread.Sleep(BetweenLooksMilliseconds);
            return true;
        }

        // While nobody types, what the last keys left behind is collected, so that it never piles up to what the runtime
        // would let it by the size of the processor's cache.
        if (awakeUntil != Asleep)
        {
            awakeUntil = Asleep;
            GC.Collect(0);
        }

        var input = new PollFd { Events = Readable };
        if (poll(ref input, 1, LongestMilliseconds) > 0)
        {
            awakeUntil = Environment.TickCount64 + AwakeMilliseconds;
        }

        return (input.Returned & Gone) == 0;
    }

    // POSIX.1-2017, poll(); the descriptor 0 is the standard input.
    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int poll(ref PollFd descriptors, nuint count, int milliseconds);

    [StructLayout(LayoutKind.Sequential)]
    private struct PollFd
    {
        public int Descriptor;
        public short Events;
        public short Returned;
    }
}
