namespace Payday.Journeys;

public class InterruptedJourneys
{
    // What is entered at each step in the first row, and how it shows then; the slip has nothing to enter.
    [Theory]
    [InlineData(1, "1990", "*1,990.00")]
    [InlineData(2, "60", "*60.00")]
    [InlineData(3, "40", "*40.00")]
    [InlineData(4, "400", "*400.00")]
    [InlineData(5, "50", "*50.00")]
    [InlineData(6, "0", "*205.00")]
    [InlineData(7, "", "")]
    public void Killed_AtAStep_GoesOnThereWithWhatWasEntered(int step, string entered, string shows)
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        string before;
        using (var first = TerminalSession.Home(folder))
        {
            first.To(1).Change("2000", "*2,000.00").On(1, step);
            if (entered.Length > 0)
            {
                first.Change(entered, shows);
            }

            if (step == 5)
            {
                // What gave way is said once, until the next key.
                first.WaitFor("Taken from Dental plan").Press("Down", ">Car loan").Press("Up", ">Sofa card");
            }

            before = first.Settled();
            first.Signal("KILL").WaitForEnd(137);
        }

        using var second = TerminalSession.Home(folder);
        Assert.Contains($"at step {step} of 7", second.Shown, StringComparison.Ordinal);
        second.Press("Enter", Steps.Mark(step)).WaitUntil(() => second.Shown == before, $"what was there before never showed:\n{before}");
    }

    [Theory]
    [InlineData("HUP", 129)]
    [InlineData("INT", 130)]
    [InlineData("QUIT", 131)]
    [InlineData("TERM", 143)]
    public void Signalled_InTheMiddle_LeavesTheTerminalSaneAndGoesOnThere(string signal, int code)
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using (var first = TerminalSession.Home(folder))
        {
            first.To(1).Change("2000", "*2,000.00").On(1, 2).Signal(signal).WaitForEnd(code);
            Assert.Equal(TerminalSession.Sane, first.Modes);
            Assert.False(first.HasOtherKeyCodes);
            Assert.Contains("isig icanon", first.Shown, StringComparison.Ordinal);
            Assert.Contains(" echo ", first.Shown, StringComparison.Ordinal);
        }

        using var second = TerminalSession.Home(folder).WaitFor("at step 2 of 7");
        second.Press("Enter", Steps.Mark(2)).Press("Left", "*2,000.00");
    }

    [Theory]
    [InlineData("HUP", 129)]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    public void Signalled_InTheDemo_LeavesNoFolderBehind(string signal, int code)
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Demo(folder);
        Assert.Single(folder.Demos);
        terminal.To(2).Signal(signal).WaitForEnd(code);
        Assert.Empty(folder.Demos);
    }

    [Fact]
    public void Suspended_AndBack_ShowsTheSameAgain()
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using var terminal = TerminalSession.Shell(folder).WaitFor("ready>");
        terminal.Type(ProgramUnderTest.ShellCommand + $" --data '{folder.Data}'\n", "Esc leave");
        string before = terminal.To(4).Settled();
        int program = terminal.Program;
        terminal.Press("C-z", "ready>").WaitForShell();
        Assert.Contains($"State:\tT", File.ReadAllText($"/proc/{program}/status"), StringComparison.Ordinal);
        Assert.Equal(TerminalSession.Sane, terminal.Modes);
        terminal.Type("fg\n", Steps.Mark(4)).WaitUntil(() => terminal.Shown == before, $"what was there before never showed:\n{before}");
        terminal.Press("Right", Steps.Mark(5));
        Assert.StartsWith("other screen 1, mouse 0", terminal.Modes, StringComparison.Ordinal);
    }
}
