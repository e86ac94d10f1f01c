using System.Runtime.InteropServices;
using System.Text;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Shell;

/// <summary>Modes of the terminal that the library leaves otherwise than a keyboard program over a slow line wants them.</summary>
internal static class TerminalModes
{
    // Xterm control sequences: 1003, 1015 and 1006 report the mouse, 2004 brackets pasted text, 1049 is the other screen,
    // 25 the cursor, and "0 q" its usual shape; 1 and ">" are the keys' codes as a shell knows them, which the runtime changes.
    // "r" has all lines move again, where a frame that moves some of them was cut off.
    private const string NoMouse = "\x1b[?1003l\x1b[?1015l\x1b[?1006l";
    private const string UsualKeys = "\x1b[?1l\x1b>";
    private const string UsualCursor = "\x1b[0 q\x1b[?25h";
    // A terminal that nobody reads from takes nothing; the program must end all the same.
    private const int PatienceMilliseconds = 2000;
    private const short Writable = 0x004;
    private const short Gone = 0x008 | 0x010 | 0x020;
    // Larger than any system's settings of a terminal; only the system reads them.
    private static readonly byte[] Settings = new byte[256];
    private static bool areKept;

    private const string Everything = NoMouse + UsualKeys + "\x1b[?2004l\x1b[m\x1b[r\x1b[?1049l" + UsualCursor;

    /// <summary>Whether the terminal is there and takes what is sent to it at this moment.</summary>
    public static bool TakesOutput => CanTake(0);

    /// <summary>Notes how the terminal is set, before anything changes it.</summary>
    public static void Keep() => areKept = tcgetattr(0, Settings) == 0;

    /// <summary>No reports of the mouse: nothing here uses it, and the terminal's own way of marking text works on.</summary>
    public static void LeaveTheMouseAlone(IDriver driver) => driver.GetOutput().Write(NoMouse);

    /// <summary>The keys' codes as they were.</summary>
    public static void LeaveTheKeysAlone(IDriver driver) => driver.GetOutput().Write(UsualKeys);

    /// <summary>The shape of the cursor as it was; a text field changes it.</summary>
    public static void UsualCursorShape(IDriver driver) => driver.GetOutput().Write(UsualCursor);

    /// <summary>The same where the library is gone.</summary>
    public static void LeaveTheKeysAlone() => Tell(UsualKeys);

    /// <summary>All as a shell expects it, where the library gets no chance to; a terminal that is gone is no fault.</summary>
    public static void RestoreAll()
    {
        if (areKept)
        {
            _ = tcsetattr(0, 0, Settings);
        }

        Tell(Everything);
    }

    private static void Tell(string sequences)
    {
        if (!CanTake(PatienceMilliseconds))
        {
            return;
        }

        try
        {
            using Stream terminal = Console.OpenStandardOutput();
            terminal.Write(Encoding.ASCII.GetBytes(sequences));
        }
        catch (IOException)
        {
            // The connection dropped: there is nothing left to restore.
        }
    }

    private static bool CanTake(int milliseconds)
    {
        var output = new PollFd { Descriptor = 1, Events = Writable };
        return poll(ref output, 1, milliseconds) > 0 && (output.Returned & (Writable | Gone)) == Writable;
    }

    // POSIX.1-2017, tcgetattr(), tcsetattr() at once (0), and poll().
    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int tcgetattr(int descriptor, byte[] settings);

    [DllImport("libc")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int tcsetattr(int descriptor, int when, byte[] settings);

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
