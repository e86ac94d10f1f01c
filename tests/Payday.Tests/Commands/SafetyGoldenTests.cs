using Payday.Tests.Slips;

namespace Payday.Tests.Commands;

/// <summary>What <c>check</c>, <c>backup</c> and <c>restore</c> tell, whole; the folder is written DIR, and what was wrapped is joined again.</summary>
public sealed partial class SafetyGoldenTests : IDisposable
{
    private readonly TestShell shell = TestShell.WithDemo();

    public SafetyGoldenTests()
    {
        shell.NeedsShortPath();
        shell.Run("run", "--accept").Fine();
        shell.Today = new(2026, 3, 7);
        shell.Run("spend", "Food", "12.34", "--what", "Corner shop").Fine();
    }

    [Fact]
    public void Check_SoundStore_IsAsRecorded()
    {
        Equal("check", 0, "check");
        Equal("check-mend-sound", 0, "check", "--mend");
    }

    [Fact]
    public void Check_DamagedStore_IsAsRecorded()
    {
        Damage(shell.Data.Journal, at: 500);
        Damage(Assert.Single(Directory.GetFiles(shell.Data.Backups)), at: 90);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(shell.Data.Path, File.GetUnixFileMode(shell.Data.Path) | UnixFileMode.OtherRead);
        }

        Equal("check-damaged", 1, "check");
        Equal("check-mend-damaged", 1, "check", "--mend");
        Equal("check-mended", 1, "check");
    }

    [Fact]
    public void Check_DatabaseGone_IsAsRecorded()
    {
        File.Delete(shell.Data.Database);

        Equal("check-database-gone", 1, "check");
        Equal("check-mend-database-gone", 0, "check", "--mend");
    }

    [Fact]
    public void Backup_HereAndElsewhere_IsAsRecorded()
    {
        Directory.CreateDirectory(shell.In("stick"));

        Equal("backup", 0, "backup");
        Equal("backup-always", 0, "backup", shell.In("stick"), "--always");
        Equal("backup-never", 0, "backup", "--never");
        Equal("backup-missing", 1, "backup", shell.In("drawer"));
    }

    [Fact]
    public void Restore_ListLookAndAccept_IsAsRecorded()
    {
        shell.Run("backup").Fine();
        string[] backups = [.. Directory.GetFiles(shell.Data.Backups).Order(StringComparer.Ordinal)];

        Equal("restore-list", 0, "restore");
        Equal("restore-look", 0, "restore", backups[0]);
        Equal("restore-look-same", 0, "restore", "database");
        Equal("restore-accept", 0, "restore", backups[0], "--accept");
        Equal("restore-look-back", 0, "restore", backups[1]);
        Equal("restore-none", 1, "restore", "yesterday");
    }

    public void Dispose() => shell.Dispose();

    private static void Damage(string path, int at)
    {
        byte[] bytes = File.ReadAllBytes(path);
        bytes[at] ^= 1;
        File.WriteAllBytes(path, bytes);
    }

    private void Equal(string golden, int exit, params string[] line)
    {
        Ran ran = shell.Run(line);
        Assert.Equal(exit, ran.Exit);
        string text = (ran.Out + ran.Error).Replace("\n  ", " ", StringComparison.Ordinal).Replace(shell.In("."), "DIR", StringComparison.Ordinal);
        text = text.Replace(Path.GetDirectoryName(shell.Data.Path)!, "DIR", StringComparison.Ordinal);
        Golden.Equal(golden, BookName().Replace(SomeBytes().Replace(text.Replace("journal. gz", "journal.gz", StringComparison.Ordinal), "its last N bytes"), "$1-BOOK").TrimEnd('\n').Split('\n'));
    }

    // How many they are changes with every field that a record gains.
    [System.Text.RegularExpressions.GeneratedRegex("its last [0-9,]+ bytes")]
    private static partial System.Text.RegularExpressions.Regex SomeBytes();

    // Each book has a name of its own.
    [System.Text.RegularExpressions.GeneratedRegex("(payday-[0-9]+T[0-9]+Z-[0-9]+)-[0-9a-f]{6}")]
    private static partial System.Text.RegularExpressions.Regex BookName();
}
