using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace Payday.Journeys;

/// <summary>The program the journeys run: the one PAYDAY_PROGRAM names, or the one built beside the tests.</summary>
internal static class ProgramUnderTest
{
    /// <summary>The words that start it.</summary>
    public static string[] Command { get; } = Environment.GetEnvironmentVariable("PAYDAY_PROGRAM") is { Length: > 0 } program
        ? [Path.GetFullPath(program)]
        : ["dotnet", Built()];

    /// <summary>The same as a shell takes it.</summary>
    public static string ShellCommand => string.Join(' ', Command.Select(word => $"'{word}'"));

    /// <summary>The full screen with a screen that has a fault behind each key.</summary>
    public static string FaultyScreen => Built(Path.Combine("tests", "Payday.FaultyScreen"), "faulty-screen.dll");

    /// <summary>The demo household's file.</summary>
    public static string DemoFile => Path.Combine(Root(), "demo", "household.json");

    /// <summary>Runs it to its end.</summary>
    /// <returns>What it said.</returns>
    public static string Run(params string[] arguments) => Ended(Command[0], [.. Command[1..], .. arguments]);

    /// <summary>Runs it to its end, with a file as its input.</summary>
    /// <returns>What it said.</returns>
    public static string RunWith(string input, params string[] arguments) => Ended("sh", ["-c", "input=$1; shift; exec \"$@\" <\"$input\"", "sh", input, .. Command, .. arguments]);

    private static string Ended(string command, string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> complained = process.StandardError.ReadToEndAsync();
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, said + complained.Result);
        return said;
    }

    // The tests' own output folder ends in the configuration and framework that the program was built in too.
    private static string Built() => Built(Path.Combine("src", "Payday"), "payday.dll");

    private static string Built(string project, string file)
    {
        var framework = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        return Path.Combine(Root(), project, "bin", framework.Parent!.Name, framework.Name, file);
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
