using System.Diagnostics;

namespace Payday.Journeys;

/// <summary>A tmux server of its own, with one window.</summary>
internal sealed class Tmux : IDisposable
{
    private static int count;

    private readonly string server = $"payday-{Environment.ProcessId}-{Interlocked.Increment(ref count)}";

    /// <summary>Ends the test as skipped where tmux is missing; on a build machine, which is told by CI, as failed.</summary>
    public Tmux()
    {
        const string Missing = "The journeys need Linux and tmux (Debian, Ubuntu: apt-get install tmux); one of them is missing.";
        bool isThere = OperatingSystem.IsLinux() && Variable("PATH").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, "tmux")));
        Assert.True(isThere || Variable("CI").Length == 0, Missing);
        Assert.SkipUnless(isThere, Missing);
    }

    /// <summary>Runs a tmux command.</summary>
    /// <returns>What it said.</returns>
    public string Do(params string[] words)
    {
        using Process process = Process.Start(new ProcessStartInfo("tmux", ["-u", "-L", server, "-f", "/dev/null", .. words]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> complained = process.StandardError.ReadToEndAsync();
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? said : throw new InvalidOperationException($"tmux {string.Join(' ', words)}: {complained.Result}");
    }

    /// <summary>A value that tmux knows of its window.</summary>
    public string Value(string format) => Do("display-message", "-p", format).TrimEnd('\n');

    public void Dispose() => Do("kill-server");

    private static string Variable(string name) => Environment.GetEnvironmentVariable(name) ?? "";
}
