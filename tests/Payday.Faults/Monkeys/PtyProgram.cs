using System.Diagnostics;
using System.Globalization;
using Payday.Faults.Programs;

namespace Payday.Faults.Monkeys;

/// <summary>The program at a pseudoterminal of its own.</summary>
internal sealed class PtyProgram : IDisposable
{
    /// <summary>How long anything may take; far more than a loaded machine needs.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Pty pty = new();
    private readonly Process process;
    private readonly Thread reading;
    private readonly string settings;
    private readonly Task<string> complained;
    private readonly Lock gate = new();
    private readonly TerminalModes modes = new();
    private volatile bool isAway;
    private volatile bool isOver;
    private long read;

    /// <param name="scratch">The data folder, beside which the program works and finds no printer.</param>
    public PtyProgram(Scratch scratch)
    {
        pty.Resize(80, 24);
        settings = pty.Settings;
        string line = string.Create(CultureInfo.InvariantCulture, $"exec setsid -c {ProgramUnderTest.ShellLine("--data", scratch.Folder.Path)} <'{pty.Path}' >'{pty.Path}'");
        process = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", line])
        {
            RedirectStandardError = true,
            WorkingDirectory = scratch.Root,
            Environment =
            {
                ["TERM"] = "xterm-256color", ["LC_ALL"] = "C.UTF-8", ["HOME"] = scratch.Root, ["TMPDIR"] = scratch.Root,
                ["PATH"] = Printer(scratch) + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH"),
            },
        })!;
        complained = process.StandardError.ReadToEndAsync();
        reading = new Thread(ReadAll) { IsBackground = true };
        reading.Start();
    }

    /// <summary>Whether the program has ended.</summary>
    public bool HasEnded => process.HasExited;

    /// <summary>How much it has written.</summary>
    public long Written => Interlocked.Read(ref read);

    /// <summary>What it wrote last.</summary>
    public string Text
    {
        get
        {
            lock (gate)
            {
                return modes.Text;
            }
        }
    }

    /// <summary>Whether nobody reads what it shows.</summary>
    public bool IsAway
    {
        set => isAway = value;
    }

    /// <summary>Sends bytes; less than all where the program takes none for long, or has ended.</summary>
    public bool Send(byte[] bytes)
    {
        int sent = 0;
        for (var watch = Stopwatch.StartNew(); sent < bytes.Length && watch.Elapsed < Patience && !HasEnded;)
        {
            sent += pty.Write(bytes.AsSpan(sent), 10);
        }

        return sent == bytes.Length || HasEnded;
    }

    public void Resize(int width, int height) => pty.Resize(width, height);

    public void Signal(int number) => Pty.Signal(process.Id, number);

    /// <summary>Whether it has stopped itself and waits to be brought back.</summary>
    public bool IsStopped
    {
        get
        {
            try
            {
                string stat = File.ReadAllText($"/proc/{process.Id}/stat");
                return stat[(stat.LastIndexOf(')') + 2)..].StartsWith('T');
            }
            catch (IOException)
            {
                return false;
            }
        }
    }

    /// <summary>Waits for its end.</summary>
    public bool WaitForEnd(TimeSpan patience) => process.WaitForExit(patience);

    /// <summary>Waits for something, as long as it runs.</summary>
    public bool WaitUntil(Func<bool> happened, TimeSpan patience)
    {
        for (var watch = Stopwatch.StartNew(); !happened() && watch.Elapsed < patience && !HasEnded;)
        {
            Thread.Sleep(2);
        }

        return happened();
    }

    /// <summary>Once it has ended: how, and what it left behind.</summary>
    /// <returns>The exit code; what it complained of; what the terminal is not like before; what it showed that nobody must see.</returns>
    public (int Exit, string Complained, string Left, string? Trace) End()
    {
        process.WaitForExit();
        isOver = true;
        reading.Join();
        string left = modes.Left + (pty.Settings == settings ? "" : $" settings {pty.Settings} instead of {settings}");
        return (process.ExitCode, complained.Result, left, modes.Trace);
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill();
            process.WaitForExit();
        }

        isOver = true;
        reading.Join();
        process.Dispose();
        pty.Dispose();
    }

    // Whoever runs this has a printer, perhaps.
    private static string Printer(Scratch scratch)
    {
        string folder = Path.Combine(scratch.Root, "commands");
        string printer = Path.Combine(folder, "lp");
        if (!File.Exists(printer))
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(printer, "#!/bin/sh\nexec cat >/dev/null\n");
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(printer, UnixFileMode.UserRead | UnixFileMode.UserExecute);
            }
        }

        return folder;
    }

    private void ReadAll()
    {
        byte[] buffer = new byte[16 * 1024];
        while (true)
        {
            if (isAway && !isOver)
            {
                Thread.Sleep(2);
                continue;
            }

            ReadOnlySpan<byte> some = pty.Read(buffer, 5);
            if (some.IsEmpty && isOver)
            {
                return;
            }

            lock (gate)
            {
                modes.Write(some);
            }

            Interlocked.Add(ref read, some.Length);
        }
    }
}
