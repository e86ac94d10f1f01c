using System.Diagnostics;
using System.Text;

namespace Payday.Faults.Programs;

/// <summary>The program that is killed: the one PAYDAY_PROGRAM names, or the one built beside the harness.</summary>
internal static class ProgramUnderTest
{
    private static readonly string[] Traces = ["Unhandled exception", "   at ", "fault of its own"];

    private static readonly string[] Command = Environment.GetEnvironmentVariable("PAYDAY_PROGRAM") is { Length: > 0 } program
        ? [Path.GetFullPath(program)]
        : ["dotnet", Built()];

    /// <summary>The same with its arguments, as a shell takes it.</summary>
    public static string ShellLine(params string[] arguments) =>
        string.Join(' ', Command.Concat(arguments).Select(word => $"'{word.Replace("'", @"'\''", StringComparison.Ordinal)}'"));

    /// <summary>Starts it, with nothing to read.</summary>
    public static Process Start(params string[] arguments)
    {
        Process process = Process.Start(new ProcessStartInfo(Command[0], [.. Command[1..], .. arguments])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        })!;
        process.StandardInput.Close();
        return process;
    }

    /// <summary>Runs it to its end.</summary>
    public static (int Exit, string Said, string Complained) Run(params string[] arguments)
    {
        using Process process = Start(arguments);
        Task<string> complained = process.StandardError.ReadToEndAsync();
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said, complained.Result);
    }

    /// <summary>Whether what it says is its own: no trace of its code, and each complaint with its name before it.</summary>
    public static bool HasItsOwnWords(string said, string complained) =>
        !Traces.Any((said + complained).Contains) && complained.Split('\n', StringSplitOptions.RemoveEmptyEntries).All(line => line.StartsWith("payday: ", StringComparison.Ordinal));

    // The harness's own output folder ends in the configuration and framework that the program was built in too.
    private static string Built()
    {
        var framework = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        string root = Path.GetDirectoryName(Path.GetDirectoryName(Life.Demo()))!;
        string program = Path.Combine(root, "src", "Payday", "bin", framework.Parent!.Name, framework.Name, "payday.dll");
        return File.Exists(program) ? program : throw new FileNotFoundException($"{program} is missing: build it, or name a program with PAYDAY_PROGRAM.");
    }
}
