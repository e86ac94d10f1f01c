using Payday.Tests.Slips;

namespace Payday.Tests.Screens;

[Collection(OneTerminal.Name)]
public class ScreenGoldenTests
{
    public static TheoryData<string> Names =>
        ["home", "income", "bills", "debts", "pots", "surplus", "withdrawal", "slip", "close", "papers", "help", "calendar", "outlook", "debts-ahead", "ledger", "ledger-filter", "undo", "reopen", "leave"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Screen_At80By24_IsAsRecorded(string name) => Check(name, 80, 24);

    [Theory]
    [MemberData(nameof(Names))]
    public void Screen_At60By20_IsAsRecorded(string name) => Check(name, 60, 20);

    [Theory]
    [InlineData("home")]
    [InlineData("bills")]
    [InlineData("pots")]
    [InlineData("withdrawal")]
    [InlineData("ledger")]
    [InlineData("outlook")]
    public void Screen_At120By40_IsAsRecorded(string name) => Check(name, 120, 40);

    [Fact]
    public void DebtsAhead_At132By40_IsAsRecorded() => Check("debts-ahead", 132, 40);

    [Fact]
    public void Pots_WithoutColour_ShowByWeightAlone()
    {
        using var terminal = new DemoTerminal();
        string shown = terminal.Open("pots").Ansi;
        Golden.Equal("pots-80x24-no-colour", shown.Replace("\e", "<ESC>", StringComparison.Ordinal).ReplaceLineEndings("\n").Split('\n'));
    }

    [Fact]
    public void Pots_InAscii_HaveNoOtherCharacter()
    {
        using var terminal = new DemoTerminal(ascii: true);
        terminal.Open("pots");
        Assert.All(terminal.Lines, line => Assert.DoesNotContain(line, character => !char.IsAscii(character)));
        Golden.Equal("pots-80x24-ascii", terminal.Lines.Select(line => line.TrimEnd()));
    }

    private static void Check(string name, int width, int height)
    {
        using var terminal = new DemoTerminal(width, height);
        terminal.Open(name);
        Assert.Equal(height, terminal.Lines.Count);
        Golden.Equal($"{name}-{width}x{height}", terminal.Lines.Select(line => line.TrimEnd()));
    }
}
