using System.Diagnostics;
using System.Globalization;

namespace Payday.Journeys;

/// <summary>A shell in a real terminal (tmux), which a person's keys go to and whose screen can be read.</summary>
internal sealed class TerminalSession : IDisposable
{
    private const string Prompt = "ready>";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static int count;

    private readonly string server = $"payday-{Environment.ProcessId}-{Interlocked.Increment(ref count)}";

    public TerminalSession(int width = 80, int height = 24)
    {
        Assert.SkipUnless(IsThere, "tmux is not installed");
        Tmux("-f", "/dev/null", "new-session", "-d", "-x", Text(width), "-y", Text(height), $"env LANG=C.UTF-8 PS1='{Prompt}' bash --norc --noprofile");
        WaitFor(Prompt);
    }

    /// <summary>Whether tmux is installed.</summary>
    public static bool IsThere { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, "tmux")));

    /// <summary>Keys pressed so far.</summary>
    public int Keys { get; private set; }

    /// <summary>What the screen shows.</summary>
    public string Shown => Tmux("capture-pane", "-p");

    /// <summary>The other screen, the mouse and the cursor, as the terminal has them: 0 and 1.</summary>
    public string Modes => Tmux("display", "-p", "other screen #{alternate_on}, mouse #{mouse_any_flag}, cursor #{cursor_flag}").Trim();

    /// <summary>Types a command to the shell.</summary>
    public TerminalSession Shell(string command)
    {
        Tmux("send-keys", "-l", command);
        Tmux("send-keys", "Enter");
        return this;
    }

    /// <summary>Presses a key, by tmux's name for it, and waits for a text to show.</summary>
    public TerminalSession Press(string key, string then)
    {
        Keys++;
        Tmux("send-keys", key);
        return WaitFor(then);
    }

    /// <summary>Types characters, and waits for a text to show.</summary>
    public TerminalSession Type(string text, string then)
    {
        Keys += text.Length;
        Tmux("send-keys", "-l", text);
        return WaitFor(then);
    }

    public TerminalSession Resize(int width, int height)
    {
        Tmux("resize-window", "-x", Text(width), "-y", Text(height));
        return this;
    }

    public TerminalSession WaitFor(string text) => WaitUntil(() => Shown.Contains(text, StringComparison.Ordinal), $"'{text}' never showed");

    public TerminalSession WaitForShell() =>
        WaitUntil(() => Shown.TrimEnd().EndsWith(Prompt, StringComparison.Ordinal), "the shell never came back");

    public TerminalSession WaitUntil(Func<bool> happened, string otherwise)
    {
        for (var watch = Stopwatch.StartNew(); !happened(); Thread.Sleep(20))
        {
            Assert.True(watch.Elapsed < Patience, $"{otherwise}; the screen is:\n{Shown}");
        }

        return this;
    }

    /// <summary>Sends the running program a signal.</summary>
    public TerminalSession Signal(string name)
    {
        string shell = Tmux("display", "-p", "#{pane_pid}").Trim();
        string program = File.ReadAllText($"/proc/{shell}/task/{shell}/children").Trim();
        using Process kill = Process.Start("kill", ["-" + name, program]);
        kill.WaitForExit();
        return this;
    }

    public void Dispose() => Tmux("kill-server");

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private string Tmux(params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo("tmux", ["-L", server, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
