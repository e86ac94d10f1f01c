using System.Text;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Shell;

/// <summary>Modes of the terminal that the library leaves otherwise than a keyboard program over a slow line wants them.</summary>
internal static class TerminalModes
{
    // Xterm control sequences: 1003, 1015 and 1006 report the mouse, 2004 brackets pasted text, 1049 is the other screen,
    // 25 the cursor, and "0 q" its usual shape; 1 and ">" are the keys' codes as a shell knows them, which the runtime changes.
    private const string NoMouse = "\x1b[?1003l\x1b[?1015l\x1b[?1006l";
    private const string UsualKeys = "\x1b[?1l\x1b>";
    private const string UsualCursor = "\x1b[0 q\x1b[?25h";
    private const string Everything = NoMouse + UsualKeys + "\x1b[?2004l\x1b[m\x1b[?1049l" + UsualCursor;

    /// <summary>No reports of the mouse: nothing here uses it, and the terminal's own way of marking text works on.</summary>
    public static void LeaveTheMouseAlone(IDriver driver) => driver.GetOutput().Write(NoMouse);

    /// <summary>The keys' codes as they were.</summary>
    public static void LeaveTheKeysAlone(IDriver driver) => driver.GetOutput().Write(UsualKeys);

    /// <summary>The shape of the cursor as it was; a text field changes it.</summary>
    public static void UsualCursorShape(IDriver driver) => driver.GetOutput().Write(UsualCursor);

    /// <summary>All as a shell expects it, where the library gets no chance to; a terminal that is gone is no fault.</summary>
    public static void RestoreAll()
    {
        try
        {
            using Stream terminal = Console.OpenStandardOutput();
            terminal.Write(Encoding.ASCII.GetBytes(Everything));
        }
        catch (IOException)
        {
            // The connection dropped: there is nothing left to restore.
        }
    }
}
