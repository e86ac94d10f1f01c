namespace Payday.Journeys;

/// <summary>Two processes on one data folder.</summary>
public class LookJourneys
{
    private const string Standing = "Only looking, no changes: process ";

    [Fact]
    public void Second_LooksWhileTheFirstChanges_AndOpensItAfterTheFirstHasEnded()
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using var first = TerminalSession.Home(folder);
        using var second = TerminalSession.Home(folder).WaitFor(Standing + first.Program);
        second.Press("Enter", "Nothing can be changed").Press("l", "Ledger").WaitFor(Standing).Press("Escape", "Esc leave");

        first.To(7).Press("c", "Enter close it").Press("Enter", "The payday is closed.");
        Assert.DoesNotContain("The payday is closed.", second.Shown, StringComparison.Ordinal);
        second.WaitFor("More is stored since; Ctrl+R at home shows it.");
        second.Press("v", "No payday has been closed yet").Press("C-r", "Payday of 6 Mar: 2,287.64 in").Press("v", "Slip and filling sheet").WaitFor(Standing).Press("Escape", "Esc leave");

        first.Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
        second.WaitFor("Nobody else has it open: Ctrl+R at home opens it.");
        second.Press("C-r", "Open it for changes?").WaitFor("Since you began to look:").WaitFor("Payday of 6 Mar: 2,287.64 in")
            .Press("Enter", "Enter payday");
        Assert.DoesNotContain("Only looking", second.Shown, StringComparison.Ordinal);
        second.To(1).Change("2000", "*2,000.00");
    }

    [Fact]
    public void Second_LooksAtMovesEntriesAndDues_WhileTheFirstWritesThem()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks(withReserve: true, WeekHousehold.Rent);
        using var first = TerminalSession.Home(folder);
        using var second = TerminalSession.Home(folder).WaitFor(Standing + first.Program);
        second.Press("t", "No money was moved yet").Press("a", "Nothing can be changed").Press("Escape", "Esc leave");
        second.Press("$", "Nothing came in or went out").Press("a", "Nothing can be changed").Press("Escape", "Esc leave");
        second.Press("q", "Bills and minimums").Press("Space", "Nothing can be changed").Press("Escape", "Esc leave");
        second.Press("@", "Nothing can be changed");

        first.Press("t", "No money was moved yet").Press("a", "Move money").Press("r", "From    Reserve").Press("Down", "What gets it")
            .Press("b", "To      Birthdays").Press("Down", "How much").Fill("Amount", "30", "Amount  30.00").Press("Right", "from Reserve to Birthdays").Press("Escape", "Esc leave");
        first.Press("q", "Bills and minimums").Press("Space", "Rent, paid").Press("Right", "ticked as paid.");

        second.WaitFor("More is stored since").Press("C-r", "30.00").WaitFor("new ledger lines.").Press("t", "30.00 from Reserve to Birthdays").Press("Escape", "Esc leave").Press("q", "paid ");
    }

    // A household's two terminals: one closes the payday, the other takes over, and the first looks in its turn.
    [Fact]
    public void Two_TakeTurns_AndEachSeesWhatTheOtherDid()
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using (var first = TerminalSession.Home(folder))
        {
            using var second = TerminalSession.Home(folder).WaitFor(Standing + first.Program);
            ProgramUnderTest.Run("show", "--data", folder.Data);
            first.To(7).Press("c", "Enter close it").Press("Enter", "The payday is closed.").Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
            second.WaitFor("Nobody else has it open");

            // A command in between neither waits for the one who looks, nor is unseen by them.
            ProgramUnderTest.Run("spend", "Food", "12.40", "--what", "Corner shop", "--on", "2026-03-07", "--data", folder.Data);
            second.WaitFor("Nobody else has it open").Press("C-r", "Food, by card: Corner shop, 12.40").Press("Enter", "Enter payday");

            using var third = TerminalSession.Home(folder).WaitFor(Standing + second.Program);
            second.Press("b", "Corner shop").Press("u", "Undo").Press("Enter", "Corner shop");
            third.WaitFor("More is stored since").Press("C-r", "Undone: ");
        }
    }

    [Fact]
    public void Second_AfterTheFirstWasKilled_CanOpenIt()
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using var first = TerminalSession.Home(folder);
        using var second = TerminalSession.Home(folder).WaitFor(Standing + first.Program);
        first.To(1).Change("2000", "*2,000.00").Signal("KILL").WaitForEnd(137);
        second.WaitFor("Nobody else has it open");
        second.Press("C-r", "Open it for changes?").Press("Enter", "Enter payday").WaitFor("at step 1 of 7").To(1).WaitFor("*2,000.00");
    }
}
