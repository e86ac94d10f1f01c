using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace Payday.Tests.Processes;

/// <summary>The program as it was built, run as a process by a shell, which can give it a full, closed or broken output.</summary>
internal static class BuiltProgram
{
    // A program that waits for ever fails its test; the slowest machine is quicker.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>Runs a line of bash in which <c>payday</c> is the program.</summary>
    /// <param name="line">The line.</param>
    /// <param name="folder">The folder to run it in.</param>
    /// <param name="environment">What the environment has otherwise; null takes a variable out.</param>
    public static Ended Run(string line, string folder, params (string Name, string? Value)[] environment)
    {
        var start = new ProcessStartInfo("bash", ["-c", $"payday() {{ {Command()} \"$@\"; }}\n{line}"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder,
        };
        start.Environment["DOTNET_NOLOGO"] = "1";
        foreach ((string name, string? value) in environment)
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        Task<string> complained = process.StandardError.ReadToEndAsync();
        Task<string> said = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"It did not end: {line}");
        }

        process.WaitForExit();
        return new Ended(process.ExitCode, said.Result, complained.Result);
    }

    /// <summary>The program as a shell takes it.</summary>
    public static string Command()
    {
        if (Environment.GetEnvironmentVariable("PAYDAY_PROGRAM") is { Length: > 0 } program)
        {
            return $"'{Path.GetFullPath(program)}'";
        }

        // The tests' own output folder ends in the configuration and framework that the program was built in too.
        var framework = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        return $"dotnet '{Path.Combine(Root(), "src", "Payday", "bin", framework.Parent!.Name, framework.Name, "payday.dll")}'";
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}

/// <summary>How a process ended.</summary>
internal sealed record Ended(int Exit, string Out, string Error)
{
    /// <summary>What it said on the error stream that a person can read: no trace of a fault of the program.</summary>
    public string[] Sentences
    {
        get
        {
            Assert.DoesNotContain("   at ", Error, StringComparison.Ordinal);
            Assert.DoesNotContain("Unhandled", Error, StringComparison.Ordinal);
            Assert.DoesNotContain("fault of its own", Error, StringComparison.Ordinal);
            string[] lines = Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
            Assert.All(lines, line => Assert.StartsWith("payday: ", line, StringComparison.Ordinal));
            return [.. lines.Where(line => !line.StartsWith("payday: note:", StringComparison.Ordinal))];
        }
    }
}
