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
        second.Press("v", "No payday has been closed yet").Press("C-r", "new ledger lines.").Press("v", "Slip and filling sheet").WaitFor(Standing).Press("Escape", "Esc leave");

        first.Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
        second.Press("C-r", "Open it for changes?").Press("Enter", "Enter payday");
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
        first.Press("q", "Bills and minimums").Press("Space", "Rent, paid").Press("Right", "Ticked.");

        second.Press("C-r", "new ledger lines.").Press("t", "30.00 from Reserve to Birthdays").Press("Escape", "Esc leave").Press("q", "paid ");
    }

    [Fact]
    public void Second_AfterTheFirstWasKilled_CanOpenIt()
    {
        using ScratchFolder folder = new ScratchFolder().WithDemoHousehold();
        using var first = TerminalSession.Home(folder);
        using var second = TerminalSession.Home(folder).WaitFor(Standing + first.Program);
        first.To(1).Change("2000", "*2,000.00").Signal("KILL").WaitForEnd(137);
        second.Press("C-r", "Open it for changes?").Press("Enter", "Enter payday").WaitFor("at step 1 of 7").To(1).WaitFor("*2,000.00");
    }
}
