using Payday.Tests.Commands;
using Payday.Tests.Slips;
using Payday.Tests.Stored;

namespace Payday.Tests.Sentences;

/// <summary>Each refusal of the commands and between paydays, word for word, with its exit code.</summary>
public sealed class RefusalScriptTests
{
    [Fact]
    public void NoHousehold_IsAsRecorded()
    {
        using var shell = new TestShell();

        Golden.Equal("no-household", Script.Run(shell, "no-household"));
    }

    [Theory]
    [InlineData("wrong-words")]
    [InlineData("between-paydays")]
    [InlineData("lists")]
    [InlineData("changed-household")]
    [InlineData("few-paydays")]
    [InlineData("notes-received")]
    [InlineData("statements")]
    public void OnAHousehold_IsAsRecorded(string script)
    {
        using var shell = new TestShell { Today = new(2026, 3, 5) };
        shell.Run("import", StoreFixture.PathOf(4, "household.json")).Fine();

        Golden.Equal(script, Script.Run(shell, script));
    }
}
