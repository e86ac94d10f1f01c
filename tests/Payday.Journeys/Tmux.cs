using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Payday.Journeys;

/// <summary>
/// A tmux server of its own, with one window. One client in control mode takes all commands and is told when the window
/// writes something, so that waiting neither starts processes nor asks again and again.
/// </summary>
internal sealed class Tmux : IDisposable
{
    private static int count;

    private readonly string server = $"payday-{Environment.ProcessId}-{Interlocked.Increment(ref count)}";
    private readonly Lock answering = new();
    private Process? client;

    /// <summary>Ends the test as skipped where tmux is missing; on a build machine, which is told by CI, as failed.</summary>
    public Tmux()
    {
        const string Missing = "The journeys need Linux and tmux (Debian, Ubuntu: apt-get install tmux); one of them is missing.";
        bool isThere = OperatingSystem.IsLinux() && Variable("PATH").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, "tmux")));
        Assert.True(isThere || Variable("CI").Length == 0, Missing);
        Assert.SkipUnless(isThere, Missing);
    }

    /// <summary>Starts the server with a window that runs a command.</summary>
    public void Begin(params string[] words)
    {
        using (Process begun = Start("new-session", ["-d", .. words]))
        {
            Task<string> complained = begun.StandardError.ReadToEndAsync();
            begun.StandardInput.Close();
            begun.StandardOutput.ReadToEnd();
            begun.WaitForExit();
            Assert.True(begun.ExitCode == 0, complained.Result);
        }

        client = Start("-C", ["attach-session"]);
        Answers = new TmuxAnswers(client.StandardOutput);
        Answers.Next();
    }

    /// <summary>Runs a tmux command.</summary>
    /// <returns>What it said.</returns>
    public string Do(params string[] words)
    {
        lock (answering)
        {
            client!.StandardInput.Write(string.Join(' ', words.Select(Quoted)) + "\n");
            client.StandardInput.Flush();
            return Answers!.Next();
        }
    }

    /// <summary>A value that tmux knows of its window.</summary>
    public string Value(string format) => Do("display-message", "-p", format).TrimEnd('\n');

    /// <summary>Waits until a condition holds that may change whenever the window writes something.</summary>
    /// <param name="holds">The condition.</param>
    /// <param name="patience">How long at most.</param>
    /// <returns>Whether it holds.</returns>
    public bool WaitUntil(Func<bool> holds, TimeSpan patience)
    {
        for (var watch = Stopwatch.StartNew(); ;)
        {
            long written = Answers!.Written;
            if (holds())
            {
                return true;
            }

            if (watch.Elapsed > patience)
            {
                return false;
            }

            Answers.WaitForMore(written);
        }
    }

    /// <summary>Waits until the window writes nothing more for a moment.</summary>
    /// <param name="patience">How long at most.</param>
    /// <returns>Whether it writes nothing more.</returns>
    public bool WaitUntilStill(TimeSpan patience)
    {
        var watch = Stopwatch.StartNew();
        while (Answers!.WaitForMore(Answers.Written))
        {
            if (watch.Elapsed > patience)
            {
                return false;
            }
        }

        return true;
    }

    public void Dispose()
    {
        if (client is null)
        {
            return;
        }

        client.StandardInput.Write("kill-server\n");
        client.StandardInput.Close();
        client.WaitForExit();
        client.Dispose();
    }

    private TmuxAnswers? Answers { get; set; }

    private Process Start(string first, string[] words) => Process.Start(
        new ProcessStartInfo("tmux", ["-u", "-L", server, "-f", "/dev/null", first, .. words])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            StandardOutputEncoding = Encoding.UTF8,
        })!;

    // As tmux reads words: as they are between single quotes; what would end the line, or the quotes, as octal numbers between double ones.
    private static string Quoted(string word)
    {
        var quoted = new StringBuilder("'");
        foreach (char one in word)
        {
            quoted.Append(one is '\'' or < ' ' ? string.Create(CultureInfo.InvariantCulture, $"'\"\\{Convert.ToString(one, 8).PadLeft(3, '0')}\"'") : one);
        }

        return quoted.Append('\'').ToString();
    }

    private static string Variable(string name) => Environment.GetEnvironmentVariable(name) ?? "";
}
