using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Payday.Faults.Programs;

/// <summary>The program at a terminal of its own (script of util-linux makes that), which takes keys and shows a screen.</summary>
internal sealed class Terminal : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Process script;
    private readonly PaintedScreen screen = new();
    private readonly Task reading;
    private readonly string pidFile;
    private readonly Lock gate = new();
    private bool isOver;

    public Terminal(Scratch scratch)
    {
        pidFile = Path.Combine(scratch.Root, "pid");
        File.Delete(pidFile);
        string line = string.Create(
            CultureInfo.InvariantCulture,
            $"stty rows {PaintedScreen.Height} cols {PaintedScreen.Width}; echo $$ >'{pidFile}'; exec {ProgramUnderTest.ShellLine("--data", scratch.Folder.Path)}");
        script = Process.Start(new ProcessStartInfo("script", ["-qfc", line, "/dev/null"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            Environment = { ["TERM"] = "xterm-256color", ["LC_ALL"] = "C.UTF-8", ["SHELL"] = "/bin/sh" },
        })!;
        reading = Task.Factory.StartNew(Read, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    /// <summary>What it shows.</summary>
    public string Shown
    {
        get
        {
            lock (gate)
            {
                return screen.Text;
            }
        }
    }

    /// <summary>Whether the program has ended, and all that it wrote is shown.</summary>
    public bool IsOver => Volatile.Read(ref isOver);

    /// <summary>Whether this machine can make such terminals.</summary>
    public static bool CanBeMade()
    {
        try
        {
            using Process script = Process.Start(new ProcessStartInfo("script", ["--version"]) { RedirectStandardOutput = true })!;
            return script.StandardOutput.ReadToEnd().Contains("util-linux", StringComparison.Ordinal);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    /// <summary>Sends keys as a terminal codes them; to a program that has ended they go nowhere.</summary>
    public void Send(string keys)
    {
        try
        {
            script.StandardInput.Write(keys);
            script.StandardInput.Flush();
        }
        catch (IOException)
        {
            // It was killed.
        }
    }

    /// <summary>Kills the program, and waits until it is gone: one that is still writing to a disk dies late.</summary>
    public void Kill()
    {
        if (Wait(() => Program() is not null || script.HasExited) && Program() is { } program)
        {
            Signal(program);
            Wait(() => IsGone(program));
        }
    }

    /// <summary>The same, and waits until all that it wrote is shown.</summary>
    public void End()
    {
        Kill();
        if (!script.WaitForExit(Patience))
        {
            script.Kill(entireProcessTree: true);
        }

        reading.Wait();
    }

    public void Dispose()
    {
        End();
        script.Dispose();
    }

    private static bool Wait(Func<bool> happened)
    {
        var watch = Stopwatch.StartNew();
        while (!happened() && watch.Elapsed < Patience)
        {
            Thread.Sleep(1);
        }

        return happened();
    }

    private static void Signal(int program)
    {
        try
        {
            using Process process = Process.GetProcessById(program);
            process.Kill();
        }
        catch (Exception fault) when (fault is ArgumentException or InvalidOperationException)
        {
            // It was killed before.
        }
    }

    // Gone, or a name that its parent has not taken note of yet: the state stands behind the name in brackets.
    private static bool IsGone(int program)
    {
        try
        {
            string stat = File.ReadAllText(string.Create(CultureInfo.InvariantCulture, $"/proc/{program}/stat"));
            return stat[stat.LastIndexOf(')') + 2] is 'Z' or 'X';
        }
        catch (IOException)
        {
            return true;
        }
    }

    // Its number; null before it is started.
    private int? Program() =>
        File.Exists(pidFile) && int.TryParse(File.ReadAllText(pidFile), NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out int number) ? number : null;

    // Not with a StreamReader: that one waits for more whenever its own buffer was filled, and shows nothing of it meanwhile.
    private void Read()
    {
        byte[] some = new byte[8192];
        char[] characters = new char[some.Length];
        Decoder utf8 = Encoding.UTF8.GetDecoder();
        Stream output = script.StandardOutput.BaseStream;
        for (int count; (count = output.Read(some)) > 0;)
        {
            int length = utf8.GetChars(some, 0, count, characters, 0);
            lock (gate)
            {
                screen.Write(characters.AsSpan(0, length));
            }
        }

        Volatile.Write(ref isOver, true);
    }
}
