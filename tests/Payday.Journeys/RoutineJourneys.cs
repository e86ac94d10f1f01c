namespace Payday.Journeys;

public class RoutineJourneys
{
    [Fact]
    public void Demo_EveryProposalTaken_IsClosedInUnder40Keys()
    {
        using var terminal = new TerminalSession();
        terminal.Shell(ProgramUnderTest.Command + " demo").WaitFor("Esc leave");
        terminal.To(7).Press("c", "Enter close it").Press("Enter", "The payday is closed.");
        Assert.InRange(terminal.Keys, 1, 39);
        terminal.Press("s", "Filling sheet").Press("Escape", "Esc leave").Press("Escape", "Leave Payday?").Press("Enter", "ready>").WaitForShell();
        Assert.Equal("other screen 0, mouse 0, cursor 1", terminal.Modes);
    }

    [Fact]
    public void Cell_BadThenRight_TakesTheRightOne()
    {
        using var terminal = new TerminalSession();
        terminal.Shell(ProgramUnderTest.Command + " demo").WaitFor("Esc leave");
        terminal.Press("Enter", Steps.Mark(1)).Press("Enter", "came in: 2,287.64").Type("12.345", "came in: 12.345");
        terminal.Press("Enter", "at most 2 decimals").Press("BSpace", "came in: 12.34\n").Press("Enter", "*12.34");
        Assert.Contains("12.34 in", terminal.Shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Resize_InTheMiddle_ShowsTheSameAgain()
    {
        using var terminal = new TerminalSession();
        terminal.Shell(ProgramUnderTest.Command + " demo").WaitFor("Esc leave");
        string before = terminal.To(6).Shown;
        terminal.Resize(60, 20).WaitFor(">Withdrawal");
        terminal.Resize(40, 10).WaitFor("Payday needs 60 columns");
        terminal.Resize(200, 50).WaitFor(Steps.Mark(6));
        terminal.Resize(80, 24).WaitUntil(() => terminal.Shown == before, "the screen never was as before");
    }
}
