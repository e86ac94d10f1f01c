using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Tests.Commands;
using Payday.Texts;

namespace Payday.Tests.Faults;

/// <summary>Does faults to the data of one household that has lived a week, and keeps what Payday says to each.</summary>
internal sealed partial class FaultPage : IDisposable
{
    private readonly TestShell shell = TestShell.WithDemo();
    private readonly StringBuilder page = new();

    public FaultPage()
    {
        shell.NeedsShortPath();
        Early = Files();
        shell.Run("run", "--accept").Fine();
        shell.Today = new(2026, 3, 7);
        shell.Run("spend", "Food", "12.34", "--what", "Corner shop").Fine();
        Before = Files();
        shell.Run("spend", "Food", "5", "--what", "Baker").Fine();
        Now = Files();
    }

    public StoreFolder Data => shell.Data;

    public NodaTime.LocalDate Today
    {
        set => shell.Today = value;
    }

    /// <summary>The files as imported: the first of four changes.</summary>
    public Dictionary<string, byte[]> Early { get; }

    /// <summary>The files after the third of four changes.</summary>
    public Dictionary<string, byte[]> Before { get; }

    /// <summary>The files as they should be.</summary>
    public Dictionary<string, byte[]> Now { get; }

    public string[] Lines => page.ToString().TrimEnd('\n').Split('\n');

    public string In(string name) => shell.In(name);

    /// <summary>Does a fault to the data as they should be, runs a command line, and writes down what it says.</summary>
    public void Add(string title, Action fault, params string[] line)
    {
        Put(Now);
        fault();
        Run(title, line);
    }

    /// <summary>Asks the store for something that no command would, and writes down how it refuses.</summary>
    public void AddRefusal(string title, Action<BookStore> work)
    {
        Put(Now);
        using BookStore store = BookStore.Open(Data);
        Write(title, [], StoreTexts.Of(Assert.Throws<StoreException>(() => work(store)).Fault) + "\n");
    }

    /// <summary>Runs a further command line on what the last one left.</summary>
    public void Then(params string[] line) => Run(null, line);

    /// <summary>Runs a command line in a process of its own, for what the system does to a process.</summary>
    public void AddProcess(string title, string variable, string value, params string[] line)
    {
        Put(Now);
        using Process process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "payday.dll"), .. line, "--data", Data.Path])
        {
            Environment = { [variable] = value },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        Task<string> told = process.StandardError.ReadToEndAsync();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Write(title, line, told.Result);
    }

    /// <summary>Takes a part of the page from what was recorded, where the fault can't be done on this system.</summary>
    public void Recorded(string title, string recorded)
    {
        int start = recorded.IndexOf($"== {title}\n", StringComparison.Ordinal);
        int end = start < 0 ? -1 : recorded.IndexOf("\n== ", start, StringComparison.Ordinal);
        page.Append('\n').Append(start < 0 ? $"== {title}\n" : recorded[start..(end < 0 ? recorded.Length : end)]);
    }

    public void Put(Dictionary<string, byte[]> files)
    {
        if (Directory.Exists(Data.Path))
        {
            Directory.Delete(Data.Path, recursive: true);
        }

        Data.Make();
        PutFiles(files);
    }

    /// <summary>Puts files into the folder as it is.</summary>
    public void PutFiles(Dictionary<string, byte[]> files)
    {
        foreach ((string name, byte[] bytes) in files)
        {
            string path = Path.Combine(Data.Path, name);
            PrivateFolder.Make(Path.GetDirectoryName(path)!);
            using FileStream file = PrivateFile.Open(path, FileShare.None);
            file.Write(bytes);
        }
    }

    public void Dispose() => shell.Dispose();

    [GeneratedRegex(@"(payday-\d{8}T\d{6}Z-\d+)-[0-9a-f]{6}")]
    private static partial Regex BookName();

    private Dictionary<string, byte[]> Files() => Directory.GetFiles(Data.Path, "*", SearchOption.AllDirectories)
        .ToDictionary(path => Path.GetRelativePath(Data.Path, path), File.ReadAllBytes, StringComparer.Ordinal);

    private void Run(string? title, string[] line)
    {
        Ran ran = shell.Run(line);
        Write(title, line, line[0] is "check" or "restore" ? ran.Out + ran.Error : ran.Error);
    }

    private void Write(string? title, string[] line, string told)
    {
        string root = Path.GetDirectoryName(Data.Path)!;
        string text = told.Replace("\n  ", " ", StringComparison.Ordinal).Replace(root, "HOME", StringComparison.Ordinal)
            .Replace($"process {Environment.ProcessId}", "process 4711", StringComparison.Ordinal);

        // Each book has a name of its own, which is another one each time.
        text = BookName().Replace(text, "$1-0123ab");
        page.Append(title is null ? "" : $"{(page.Length > 0 ? "\n" : "")}== {title}\n");
        page.Append(line.Length == 0 ? "" : $"$ payday {string.Join(' ', line.Select(word => word.Replace(root, "HOME", StringComparison.Ordinal)))}\n");
        page.Append(text.Length > 0 ? text : "(nothing to tell)\n");
    }
}
