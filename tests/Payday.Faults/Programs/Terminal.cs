using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Payday.Faults.Programs;

/// <summary>The program at a terminal of its own (script of util-linux makes that), which takes keys and shows a screen.</summary>
internal sealed class Terminal : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

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

    /// <summary>Kills the program; its terminal ends by itself once all that was written is read.</summary>
    public void Kill()
    {
        KillProgram();

        // Seen now and then on a busy machine: script goes on although its program is gone.
        if (!script.WaitForExit(Patience))
        {
            script.Kill(entireProcessTree: true);
        }
    }

    /// <summary>Kills the program and waits until all that it wrote is shown.</summary>
    public void End()
    {
        Kill();
        reading.Wait();
    }

    public void Dispose()
    {
        End();
        script.Dispose();
    }

    private void KillProgram()
    {
        try
        {
            using Process program = Process.GetProcessById(int.Parse(File.ReadAllText(pidFile), CultureInfo.InvariantCulture));
            program.Kill();
        }
        catch (Exception fault) when (fault is FileNotFoundException or FormatException or ArgumentException or InvalidOperationException)
        {
            // Not started yet, or ended already; then the terminal goes below.
        }
    }

    private void Read()
    {
        char[] some = new char[4096];
        using var output = new StreamReader(script.StandardOutput.BaseStream, new UTF8Encoding(false));
        for (int count; (count = output.Read(some)) > 0;)
        {
            lock (gate)
            {
                screen.Write(some.AsSpan(0, count));
            }
        }

        Volatile.Write(ref isOver, true);
    }
}
