using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace Payday.Journeys;

/// <summary>The program the journeys run: the one PAYDAY_PROGRAM names, or the one built beside the tests.</summary>
internal static class ProgramUnderTest
{
    /// <summary>How a shell starts it.</summary>
    public static string Command { get; } = Environment.GetEnvironmentVariable("PAYDAY_PROGRAM") is { Length: > 0 } program
        ? Quoted(Path.GetFullPath(program))
        : "dotnet " + Quoted(Built());

    /// <summary>Runs it to its end.</summary>
    public static void Run(string arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", $"{Command} {arguments}"]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        string output = process.StandardOutput.ReadToEnd() + process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, output);
    }

    /// <summary>The demo household's file.</summary>
    public static string DemoFile => Path.Combine(Root(), "demo", "household.json");

    public static string Quoted(string path) => $"'{path.Replace("'", "'\\''", StringComparison.Ordinal)}'";

    // The tests' own output folder ends in the configuration and framework that the program was built in too.
    private static string Built()
    {
        var framework = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        return Path.Combine(Root(), "src", "Payday", "bin", framework.Parent!.Name, framework.Name, "payday.dll");
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
