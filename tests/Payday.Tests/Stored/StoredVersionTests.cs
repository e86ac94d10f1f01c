using System.Text;
using Payday.Tests.Commands;
using Payday.Tests.Slips;

namespace Payday.Tests.Stored;

/// <summary>What each schema version left on the disk, opened by this program: all of it, byte for byte.</summary>
public sealed class StoredVersionTests
{
    // The first of them opens the store, and says what became of it.
    private static readonly string[] Commands =
    [
        "status", "show", "show pots", "show bills", "show debts", "show calendar", "show year", "show ledger --whole",
        "run", "fill", "fill --on 2026-03-27", "count", "return", "slip", "slip --filling", "check",
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Export_StoreOfEachVersion_IsAsRecorded(int version)
    {
        using TestShell shell = StoreFixture.Shell(version);

        Golden.Equal($"export-v{version}", shell.Run("export").Lines);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Commands_OnStoreOfEachVersion_AnswerAsRecorded(int version)
    {
        using TestShell shell = StoreFixture.Shell(version);

        Golden.Equal($"answers-v{version}", Commands.SelectMany(line => Answer(shell, line)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Commands_InJsonOnStoreOfEachVersion_AnswerAsRecorded(int version)
    {
        using TestShell shell = StoreFixture.Shell(version);

        Golden.Equal($"json-v{version}", Commands.SelectMany(line => Answer(shell, line + " --json")));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void ExportCsv_OfEachVersion_IsAsRecorded(int version)
    {
        using TestShell shell = StoreFixture.Shell(version);
        string to = shell.In("csv");
        shell.Run("export", "--csv", to);

        Golden.Equal($"csv-v{version}", Directory.GetFiles(to).Order(StringComparer.Ordinal).SelectMany(file =>
            (string[])["== " + Path.GetFileName(file), .. File.ReadAllText(file).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')]));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Check_OnceItWasOpened_IsSound(int version)
    {
        using TestShell shell = StoreFixture.Shell(version);
        shell.Run("status");

        shell.Run("check").Fine();
    }

    private static IEnumerable<string> Answer(TestShell shell, string line)
    {
        Ran ran = shell.Run(line.Split(' '));
        string text = new StringBuilder(ran.Out + ran.Error).Replace(shell.Data.Path, "DATA").ToString();
        return [$"$ payday {line}", .. text.TrimEnd('\n').Split('\n'), $"= {ran.Exit}", ""];
    }
}
