using System.Runtime.InteropServices;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Shell;

/// <summary>Reads the keyboard, on a thread of the library: waits for something to read, where the library's own reader looks every 20 ms.</summary>
internal sealed class KeyboardInput : AnsiInput
{
    // How long leaving the program may have to wait for this thread.
    private const int LookUpMilliseconds = 50;
    private const short Readable = 0x001;
    private const short Gone = 0x008 | 0x010 | 0x020;

    private readonly AutoResetEvent news = new(initialState: false);
    private volatile bool isGone;
    private volatile bool isOver;

    /// <summary>Whether the terminal is gone.</summary>
    public bool IsGone => isGone;

    /// <summary>Waits until keys were read, the terminal was gone or somebody told of other news.</summary>
    /// <returns>Whether there is any before the time is over.</returns>
    public bool Wait(int milliseconds) => news.WaitOne(milliseconds);

    /// <summary>Ends a waiting.</summary>
    public void Tell() => news.Set();

    /// <summary>Reads no more.</summary>
    public void End() => isOver = true;

    /// <inheritdoc/>
    public override bool Peek()
    {
        var input = new PollFd { Events = Readable };
        while (!isOver)
        {
            if (isGone)
            {
                Thread.Sleep(LookUpMilliseconds);
            }
            else if (poll(ref input, 1, LookUpMilliseconds) > 0)
            {
                isGone = (input.Returned & Gone) != 0;
                if (!isGone)
                {
                    return true;
                }

                Tell();
            }
        }

        return false;
    }

    /// <inheritdoc/>
    public override IEnumerable<char> Read()
    {
        foreach (char character in base.Read())
        {
            yield return character;
        }

        // Asked for more, the library has taken all there was.
        Tell();
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
