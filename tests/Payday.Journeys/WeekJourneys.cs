
namespace Payday.Journeys;

public class WeekJourneys
{
    [Fact]
    public void Count_OfEightPots_TakesUnder30Keys()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks();
        using var terminal = TerminalSession.Home(folder).WaitFor("8 spending pots to count");
        int before = terminal.Keys;
        terminal.Press("w", "0 of 8 counted");
        string[] left = ["4", "0", "12", "9", "0", "35", "7", "0"];
        for (int i = 0; i < left.Length; i++)
        {
            terminal.Type(left[i], ": " + left[i]).Press("Enter", $"{i + 1} of 8 counted");
        }

        terminal.Press("c", "8 pots counted");
        Assert.InRange(terminal.Keys - before, 1, 29);
    }

    [Fact]
    public void Count_Killed_GoesOnWithWhatWasCounted()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks();
        using (var first = TerminalSession.Home(folder))
        {
            first.Press("w", "0 of 8 counted").Type("4.50", ": 4.50").Press("Enter", "1 of 8 counted").Signal("KILL").WaitForEnd(137);
        }

        using var second = TerminalSession.Home(folder);
        second.Press("w", "1 of 8 counted").WaitFor("15.50");
    }

    [Fact]
    public void Purchases_AReturnAndTheNextPayday_UseTheOwedBackNotes()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks();
        using var terminal = TerminalSession.Home(folder);
        terminal.Press("f", "8 pots to fill").Press("C-a", "8 pots filled").Press("Escape", "Esc leave");

        terminal.Press("b", "Nothing was bought").Buy("Corner shop", "12.40", "15.00").Buy("Corner shop", "7", "10.00");
        terminal.Press("r", "25.00 to the bank").Press("c", "Deposit slip").Press("Enter", "25.00 is back in the account");

        terminal.Press("b", "7.00").Buy("Corner shop", "10", "10.00").Press("Escape", "Esc leave");
        terminal.Press("w", "0 of 8 counted").Press("d", "Count for: ")
            .Type(WeekHousehold.Iso(WeekHousehold.Today), WeekHousehold.Iso(WeekHousehold.Today)).Press("Enter", "0 of 8 counted");
        terminal.Press("n", "Count Food by notes").Press("Down", ">      10")
            .Type("1", ": 1").Press("Enter", "Together 10.00").Type("1", ": 1").Press("Enter", "Together 15.00").Press("Right", "1 of 8 counted");
        terminal.Press("c", "1 pot counted");

        terminal.To(6).WaitFor("Notes to pay back taken to the bank:").Press("r", "Notes to pay back used here:");
        terminal.Press("Right", Steps.Mark(7)).Press("c", "Enter close it").Press("Enter", "The payday is closed.");
        Assert.DoesNotContain("to pay back to the account", terminal.Settled(), StringComparison.Ordinal);
    }
}
