namespace Payday.Journeys;

public class RoutineJourneys
{
    [Fact]
    public void Demo_EveryProposalTaken_IsClosedInUnder40Keys()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Demo(folder);
        terminal.To(7).Press("c", "Enter close it").Press("Enter", "The payday is closed.");
        Assert.InRange(terminal.Keys, 1, 39);
        terminal.Press("v", "Filling sheet").Press("Escape", "Esc leave").Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
        Assert.Equal(TerminalSession.Sane, terminal.Modes);
        Assert.False(terminal.HasOtherKeyCodes);
        Assert.Empty(folder.Demos);
    }

    [Fact]
    public void Demo_AtADumbTerminal_IsPrinted()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Dumb(folder, "demo").WaitForEnd(0);
        Assert.Contains("not financial advice", terminal.Shown.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(TerminalSession.Sane, terminal.Modes);
    }

    [Fact]
    public void Cell_BadThenRight_TakesTheRightOne()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Demo(folder);
        terminal.To(1).Press("Enter", "came in: 2,287.64").Type("12.345", "came in: 12.345");
        terminal.Press("Enter", "at most 2 decimals").Press("BSpace", "came in: 12.34\n").Press("Enter", "*12.34");
        Assert.Contains("12.34 in", terminal.Settled(), StringComparison.Ordinal);
    }

    [Fact]
    public void Resize_InTheMiddle_ShowsTheSameAgain()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Demo(folder);
        string before = terminal.To(6).Settled();
        terminal.Resize(60, 20).WaitFor(">Withdrawal");
        terminal.Resize(200, 50).WaitFor(Steps.Mark(6));
        terminal.Resize(59, 19).WaitFor("this is 59 x 19");
        terminal.Resize(80, 24).WaitUntil(() => terminal.Shown == before, $"what was there before never showed:\n{before}");
    }

    [Fact]
    public void Resize_WhileTyping_KeepsWhatWasTyped()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Demo(folder);
        terminal.To(4).Press("Enter", "Food with: ").Type("12", "Food with: 12");
        terminal.Resize(60, 20).WaitFor("Food with: 12").Resize(30, 8).WaitFor("Payday needs").Resize(200, 50).WaitFor("Food with: 12");
        terminal.Resize(80, 24).Type(".50", "Food with: 12.50").Press("Enter", "*12.50");
    }
}
