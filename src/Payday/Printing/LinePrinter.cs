using System.Collections.Immutable;
using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Text;
using Payday.Texts;

namespace Payday.Printing;

/// <summary>Prints lines with the system's <c>lp</c> command.</summary>
/// <param name="searchPath">Folders to look for it in, as in the variable PATH; only absolute ones count, so that no stray file runs.</param>
internal sealed class LinePrinter(string? searchPath)
{
    private const int MostWords = 10_000;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan PatienceForWords = TimeSpan.FromSeconds(1);

    /// <summary>Prints lines and waits until they are handed over.</summary>
    /// <param name="lines">Clean lines.</param>
    /// <param name="printer">The printer's name, or null for the system's usual one.</param>
    /// <param name="ascii">Whether the printer knows ASCII alone; otherwise UTF-8 is sent.</param>
    /// <returns>What the command said, or why nothing was printed.</returns>
    public Result<string> Print(ImmutableArray<string> lines, string? printer, bool ascii) =>
        Print(Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => (ascii ? TextFold.ToAscii(line) : line) + "\n"))), printer);

    /// <summary>Prints a file, such as a PDF, which the system's printing knows by its beginning, and waits until it is handed over.</summary>
    /// <param name="content">All of it.</param>
    /// <param name="printer">The printer's name, or null for the system's usual one.</param>
    /// <returns>What the command said, or why nothing was printed.</returns>
    public Result<string> Print(byte[] content, string? printer)
    {
        if (printer is not null && (printer.Length == 0 || printer[0] == '-' || printer != CleanText.OneLine(printer)))
        {
            return Result.Refused<string>(new PrinterFault.NoPlainName());
        }

        if (Find() is not { } command)
        {
            return Result.Refused<string>(new PrinterFault.NoCommand());
        }

        try
        {
            using Process process = Process.Start(StartInfo(command, printer))!;
            return Send(process, content);
        }
        catch (Win32Exception)
        {
            return Result.Refused<string>(new PrinterFault.CantBeRun());
        }
    }

    private static ProcessStartInfo StartInfo(string command, string? printer) =>
        new(command, printer is null ? [] : ["-d", printer])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };

    private static Result<string> Send(Process process, byte[] content)
    {
        var said = new StringBuilder();
        var complained = new StringBuilder();
        Task[] ends = [Collect(process.StandardOutput, said), Collect(process.StandardError, complained), Feed(process.StandardInput, content)];
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            return Result.Refused<string>(new PrinterFault.NotFinished());
        }

        // A process that it leaves behind, of a spooler, say, may keep its ends open; all that lp said is read by then.
        Task.WaitAll(ends, PatienceForWords);
        return process.ExitCode == 0
            ? Result.Of(FirstLine(Text(said)))
            : Result.Refused<string>(new PrinterFault.Refused(FirstLine(Text(complained))));
    }

    private static async Task Collect(StreamReader from, StringBuilder into)
    {
        char[] piece = new char[1024];
        try
        {
            while (await from.ReadAsync(piece).ConfigureAwait(false) is > 0 and var read)
            {
                lock (into)
                {
                    // Only a line of it is told.
                    into.Append(piece, 0, into.Length < MostWords ? read : 0);
                }
            }
        }
        catch (Exception fault) when (fault is IOException or ObjectDisposedException)
        {
            // Closed here, while something left behind held its other end.
        }
    }

    private static string Text(StringBuilder words)
    {
        lock (words)
        {
            return words.ToString();
        }
    }

    private static async Task Feed(StreamWriter input, byte[] content)
    {
        try
        {
            await input.BaseStream.WriteAsync(content).ConfigureAwait(false);
            input.Close();
        }
        catch (Exception fault) when (fault is IOException or ObjectDisposedException)
        {
            // It stopped reading; its exit code says whether it failed.
        }
    }

    private static string FirstLine(string text) =>
        TextColumns.Truncate(CleanText.OneLine(text.Split('\n').FirstOrDefault(line => line.Trim().Length > 0) ?? "").Trim(), 200);

    private string? Find() =>
        (searchPath ?? "").Split(Path.PathSeparator)
            .Where(Path.IsPathFullyQualified)
            .Select(folder => Path.Combine(folder, "lp"))
            .FirstOrDefault(File.Exists);
}
