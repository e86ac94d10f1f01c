using System.Diagnostics;
using System.Globalization;

namespace Payday.Journeys;

/// <summary>A command in a real terminal (tmux), which a person's keys go to and whose screen can be read.</summary>
internal sealed class TerminalSession : IDisposable
{
    // Far more than a loaded machine takes: only a test that fails waits so long.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    // When the program has ended, its terminal's settings and its exit code show, and keys go nowhere.
    private const string ThenShowsHowItEnded = "\"$@\"; code=$?; stty -a; echo \"[ended $code]\"; exec sleep 3600";

    private readonly Tmux tmux = new();

    private TerminalSession(ScratchFolder folder, string[] command) => tmux.Begin(
    [
        "-x", "80", "-y", "24", "-c", folder.In(""),
        "--", "sh", "-c", "printf '\\033]0;still\\007'; exec \"$@\"", "sh", "env", "LC_ALL=C.UTF-8", $"TMPDIR={folder.Temporary}", $"PATH={folder.Commands}:{Environment.GetEnvironmentVariable("PATH")}", .. command,
    ]);

    /// <summary>Keys pressed so far.</summary>
    public int Keys { get; private set; }

    /// <summary>What the screen shows.</summary>
    public string Shown => tmux.Do("capture-pane", "-p");

    /// <summary>What a terminal looks like to a shell that it belongs to again.</summary>
    public const string Sane = "other screen 0, mouse 0, title still, cursor 1";

    /// <summary>The other screen, the mouse, the title and the cursor, as the terminal has them.</summary>
    public string Modes => tmux.Value("other screen #{alternate_on}, mouse #{mouse_any_flag}, title #{pane_title}, cursor #{cursor_flag}");

    /// <summary>Whether arrows and the keypad send the codes that programs ask for, not those a shell expects.</summary>
    public bool HasOtherKeyCodes => tmux.Value("#{keypad_cursor_flag}#{keypad_flag}") != "00";

    /// <summary>The program's process; there is none before it shows something, or after its end.</summary>
    public int Program
    {
        get
        {
            string parent = tmux.Value("#{pane_pid}");
            return int.Parse(File.ReadAllText($"/proc/{parent}/task/{parent}/children"), CultureInfo.InvariantCulture);
        }
    }

    /// <summary>Starts the program.</summary>
    public static TerminalSession Of(ScratchFolder folder, params string[] arguments) =>
        new(folder, ["sh", "-c", ThenShowsHowItEnded, "sh", .. ProgramUnderTest.Command, .. arguments]);

    /// <summary>Starts the program on the data folder, and waits for its first screen.</summary>
    public static TerminalSession Home(ScratchFolder folder) => Of(folder, "--data", folder.Data).WaitFor("Esc leave");

    /// <summary>Starts the program on the demo household, and waits for its first screen.</summary>
    public static TerminalSession Demo(ScratchFolder folder) => Of(folder, "demo").WaitFor("Esc leave");

    /// <summary>Starts the full screen with a screen that has a fault behind each key.</summary>
    public static TerminalSession Faulty(ScratchFolder folder) =>
        new(folder, ["sh", "-c", ThenShowsHowItEnded, "sh", "dotnet", ProgramUnderTest.FaultyScreen, folder.Data]);

    /// <summary>Starts the program at a terminal that can't move its cursor.</summary>
    public static TerminalSession Dumb(ScratchFolder folder, params string[] arguments) =>
        new(folder, ["env", "TERM=dumb", "sh", "-c", ThenShowsHowItEnded, "sh", .. ProgramUnderTest.Command, .. arguments]);

    /// <summary>Starts a shell with job control, which leaves nothing behind.</summary>
    public static TerminalSession Shell(ScratchFolder folder) =>
        new(folder, ["env", "PS1=ready>", "HISTFILE=", "INPUTRC=/dev/null", "bash", "--norc", "--noprofile", "-i"]);

    /// <summary>Presses a key, by tmux's name for it, and waits for a text to show.</summary>
    public TerminalSession Press(string key, string then)
    {
        Keys++;
        tmux.Do("send-keys", key);
        return WaitFor(then);
    }

    /// <summary>Types characters, and waits for a text to show.</summary>
    public TerminalSession Type(string text, string then)
    {
        Keys += text.Length;
        tmux.Do("send-keys", "-l", text);
        return WaitFor(then);
    }

    /// <summary>Pastes a text, which counts as no key, and waits for a text to show.</summary>
    public TerminalSession Paste(string text, string then)
    {
        tmux.Do("set-buffer", text);
        tmux.Do("paste-buffer", "-p");
        return WaitFor(then);
    }

    public TerminalSession Resize(int width, int height)
    {
        tmux.Do("resize-window", "-x", width.ToString(CultureInfo.InvariantCulture), "-y", height.ToString(CultureInfo.InvariantCulture));
        return this;
    }

    /// <summary>Sends the program a signal.</summary>
    public TerminalSession Signal(string name)
    {
        using Process kill = Process.Start("kill", ["-" + name, Program.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
        Assert.Equal(0, kill.ExitCode);
        return this;
    }

    /// <summary>Waits until the program has ended with an exit code.</summary>
    public TerminalSession WaitForEnd(int code) => WaitFor($"[ended {code}]");

    /// <summary>Waits for a text to show, also where it goes on in the next line.</summary>
    public TerminalSession WaitFor(string text) => WaitUntil(
        () => Shown is var shown && (shown.Contains(text, StringComparison.Ordinal) || InOneLine(shown).Contains(text, StringComparison.Ordinal)),
        $"'{text}' never showed");

    public TerminalSession WaitUntil(Func<bool> happened, string otherwise)
    {
        // Once the program has ended nothing more happens; what was about to happen then, has.
        bool hasEnded = false;
        bool did = tmux.WaitUntil(() => happened() || (hasEnded = Shown.Contains("[ended ", StringComparison.Ordinal)), Patience);
        Assert.True(did && (!hasEnded || happened()), $"{otherwise}; the screen is:\n{Shown}");
        return this;
    }

    /// <summary>The first row of the screen that has a text, from 0; the cursor's is that with <c>&gt;</c>.</summary>
    public int RowOf(string text) => Array.FindIndex(Settled().Split('\n'), line => line.Contains(text, StringComparison.Ordinal));

    /// <summary>What the screen shows once it stands still.</summary>
    public string Settled()
    {
        bool did = tmux.WaitUntilStill(Patience);
        string shown = Shown;
        Assert.True(did, $"the screen never stood still; it is:\n{shown}");
        return shown;
    }

    /// <summary>Waits until the terminal is the shell's again.</summary>
    public TerminalSession WaitForShell() => WaitUntil(() => tmux.Value("#{pane_current_command}") == "bash", "the shell never came back");

    public void Dispose() => tmux.Dispose();

    private static string InOneLine(string shown) => string.Join(' ', shown.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
