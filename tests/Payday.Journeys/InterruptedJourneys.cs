namespace Payday.Journeys;

public class InterruptedJourneys
{
    private const string Sane = "other screen 0, mouse 0, cursor 1";

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Killed_AtAStep_GoesOnThere(int step)
    {
        using var household = new Household();
        using (var first = new TerminalSession())
        {
            first.Shell(household.Command).WaitFor("Esc leave");
            first.To(step).Signal("KILL").WaitForShell();
        }

        using var second = new TerminalSession();
        second.Shell(household.Command).WaitFor(step == 1 ? "Enter begins" : $"at step {step} of 7");
        second.Press("Enter", Steps.Mark(step));
    }

    [Theory]
    [InlineData("HUP")]
    [InlineData("TERM")]
    [InlineData("INT")]
    public void Signalled_InTheMiddle_LeavesTheTerminalSaneAndGoesOnThere(string signal)
    {
        using var household = new Household();
        using var terminal = new TerminalSession();
        terminal.Shell(household.Command).WaitFor("Esc leave");
        terminal.Press("Enter", Steps.Mark(1)).Press("Enter", "came in: 2,287.64").Type("2000", "came in: 2000").Press("Enter", "*2,000.00");
        terminal.Press("Right", Steps.Mark(2)).Signal(signal).WaitForShell();
        Assert.Equal(Sane, terminal.Modes);
        terminal.Shell("clear; stty -a | tr ';' ' '").WaitFor("isig icanon").WaitFor(" echo ");
        terminal.Shell("clear; " + household.Command).WaitFor("at step 2 of 7");
        terminal.Press("Enter", Steps.Mark(2)).Press("Left", "*2,000.00");
    }

    [Fact]
    public void Suspended_AndBack_ShowsTheSameAgain()
    {
        using var household = new Household();
        using var terminal = new TerminalSession();
        terminal.Shell(household.Command).WaitFor("Esc leave");
        string before = terminal.To(4).Shown;
        terminal.Press("C-z", "Stopped").WaitForShell();
        Assert.Equal(Sane, terminal.Modes);
        terminal.Shell("fg").WaitUntil(() => terminal.Shown == before, "the screen never was as before");
        terminal.Press("Right", Steps.Mark(5));
        Assert.StartsWith("other screen 1, mouse 0", terminal.Modes, StringComparison.Ordinal);
    }
}
