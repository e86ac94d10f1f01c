using System.Text.RegularExpressions;
using Payday.Tests.Commands;
using Payday.Tests.Slips;

namespace Payday.Tests.Stored;

/// <summary>Every field and word that reaches the journal, as a life with one of everything writes them.</summary>
/// <remarks>The fixture of version 5 was written by this same life; where a later version writes more, the golden changes and the fixture stays.</remarks>
public sealed partial class WrittenJournalTests
{
    [Fact]
    public void Journal_OfALifeLivedAnew_IsAsRecorded() => Golden.Equal("journal-lived", Lived());

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Journal_BegunForAnOlderStore_IsAsRecorded(int version)
    {
        using TestShell shell = StoreFixture.Shell(version);
        shell.Run("status");

        Golden.Equal($"journal-v{version}", Lines(shell));
    }

    private static string[] Lived()
    {
        using var shell = new TestShell();
        PlayedLife.Live(shell, File.ReadLines(StoreFixture.PathOf(5, "life.txt")), name => StoreFixture.PathOf(5, name));
        return Lines(shell);
    }

    // Each line names the one before it by its hash, and the book by a random number.
    private static string[] Lines(TestShell shell) =>
        [.. File.ReadAllLines(shell.Data.Journal).Select(line => Chance().Replace(line, "\"$1\":\"\""))];

    [GeneratedRegex("""
        "(prev|book|sha)":"[0-9a-f]+"
        """)]
    private static partial Regex Chance();
}
