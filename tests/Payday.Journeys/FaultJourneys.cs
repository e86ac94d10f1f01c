namespace Payday.Journeys;

public class FaultJourneys
{
    private const string Fault = "payday: Payday met a fault of its own (InvalidOperationException";

    [Theory]
    [InlineData("k")]
    [InlineData("d")]
    [InlineData("x")]
    [InlineData("\e[200~pasted\e[201~")]
    [InlineData("e\r")]
    public void Fault_InAScreen_GivesTheTerminalBackSaysItAndFreesTheFolder(string keys)
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using var terminal = TerminalSession.Faulty(folder).WaitFor("a fault behind each key");
        terminal.Type(keys, Fault).WaitForEnd(1);
        Assert.Equal(TerminalSession.Sane, terminal.Modes);
        Assert.False(terminal.HasOtherKeyCodes);
        Assert.Contains("isig icanon", terminal.Shown, StringComparison.Ordinal);
        Assert.Contains(" echo ", terminal.Shown, StringComparison.Ordinal);
        Assert.DoesNotContain("Nobody is to read this", terminal.Shown, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", terminal.Shown, StringComparison.Ordinal);
        using var second = TerminalSession.Home(folder);
        Assert.DoesNotContain("Only looking", second.Shown, StringComparison.Ordinal);
    }

    // What terminals send by mistake, or a paste holds that somebody made so: the program goes on as if it had not come.
    [Theory]
    [InlineData("\e[201~")]
    [InlineData("\e[200~a\e[200~b\e[201~\e[201~")]
    [InlineData("\e[99999999999999~\e[1;99999A")]
    [InlineData("\e[<0;1;1M\e[M !!\e]52;c;YQ==\a")]
    public void Mark_OfAPasteOrOtherNonsense_ChangesNothing(string sent)
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Demo(folder);
        string before = terminal.Settled();
        terminal.Type(sent + "?", "Help: ").WaitFor("Esc back").Press("Escape", "Enter payday");
        Assert.Equal(before, terminal.Settled());
        terminal.Press("C-c", "Leave Payday?").Press("Enter", "[ended 0]");
    }

    [Fact]
    public void Pasted_List_IsReadWhole()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Demo(folder);
        string lines = string.Concat(Enumerable.Range(1, 40).Select(i => $"2026-03-01, {i}.20, Café {i}\n"));
        terminal.Press("b", "Card purchases").Press("i", "Paste the list here").Type($"\e[200~{lines}\e[201~", "40 purchases, 828.00");
        terminal.WaitFor("Café 1 ");
    }
}
