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
    public void Demo_AtADumbTerminal_AsksLineByLineToTheClosedPayday()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Dumb(folder, "demo").WaitFor("What now? payday proposed");
        terminal.Press("Enter", "Odette, joinery: 2,287.64 expected.").Type("2300", "2300").Press("Enter", "Odette, joinery: 2,300.00.");
        terminal.Type("?", "?").Press("Enter", "typed as its name, an equals sign").Type("back", "back").Press("Enter", "2,300.00 as you said");
        for (int i = 0; !terminal.Settled().Contains("Close the payday?", StringComparison.Ordinal); i++)
        {
            Assert.InRange(i, 0, 60);
            terminal.Press("Enter", "proposed");
        }

        terminal.Press("Enter", "The payday is closed.");
        terminal.Type("stop", "stop").Press("Enter", "[ended 0]");
        Assert.Equal(TerminalSession.Sane, terminal.Modes);
        Assert.Empty(folder.Demos);
    }

    [Fact]
    public void Ask_EndedByControlD_GoesOnAtTheSameQuestionAndOnTheFullScreen()
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using (var first = TerminalSession.Dumb(folder, "--data", folder.Data).WaitFor("What now?"))
        {
            first.Type("payday", "payday").Press("Enter", "Odette").Type("2300", "2300").Press("Enter", "anything else").Press("Enter", "buffer").Press("Enter", "After-school club").Press("C-d", "[ended 0]");
        }

        using (var again = TerminalSession.Dumb(folder, "--data", folder.Data).WaitFor("Going on where it was left"))
        {
            again.WaitFor("After-school club").Press("C-d", "[ended 0]");
        }

        using var screen = TerminalSession.Home(folder).WaitFor("Enter goes on at step 2 of 7.");
        screen.Press("Enter", "2,300.00 in");
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
