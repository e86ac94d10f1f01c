namespace Payday.Journeys;

public class MoveJourneys
{
    // An emergency on a Tuesday: out of the reserve, and the terminal goes in between.
    [Fact]
    public void Move_FromTheReserve_OutlivesAKilledTerminal()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks(withReserve: true);
        using (var first = TerminalSession.Home(folder))
        {
            first.Press("t", "No money was moved yet").Press("a", "Move money").Press("r", "From    Reserve").Press("Down", "What gets it")
                .Press("b", "To      Birthdays").Press("Down", "How much").Type("30", ": 30").Press("Enter", "Amount  30.00").Signal("KILL").WaitForEnd(137);
        }

        using var second = TerminalSession.Home(folder);
        second.Press("t", "No money was moved yet").Press("a", "From    Reserve").WaitFor("To      Birthdays").WaitFor("Then: Reserve")
            .Press("Right", "from Reserve to Birthdays").Press("u", "Undo move 1").Press("Enter", "Move 1 is undone.");
    }
}
