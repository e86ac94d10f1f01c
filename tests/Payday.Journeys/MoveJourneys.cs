namespace Payday.Journeys;

public class MoveJourneys
{
    // An emergency on a Tuesday: out of the reserve, and the terminal goes in between.
    [Fact]
    public void Move_FromTheReserve_OutlivesAKilledTerminal()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks();
        using (var first = TerminalSession.Home(folder))
        {
            first.Press("t", "No money was moved yet").Press("a", "Move money").Press("r", "From    Reserve").Press("Down", "What gets it")
                .Press("b", "To      Birthdays").Press("Down", "How much").Type("30", ": 30").Press("Enter", "Amount  30.00").Signal("KILL").WaitForEnd(137);
        }

        using var second = TerminalSession.Home(folder);
        second.Press("t", "No money was moved yet").Press("a", "From    Reserve").WaitFor("To      Birthdays").WaitFor("Then: Reserve")
            .Press("Right", "from Reserve to Birthdays").Press("u", "Undo move 1").Press("Enter", "Move 1 is undone.");
    }

    [Fact]
    public void Entry_OfAFee_OutlivesAKilledTerminal()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks();
        using (var first = TerminalSession.Home(folder))
        {
            first.Press("$", "Nothing came in or went out").Press("a", "Came in or went out").Press("w", "Way     Went out").Press("Down", "How much")
                .Type("12.50", ": 12.50").Press("Enter", "Amount  12.50").Signal("KILL").WaitForEnd(137);
        }

        using var second = TerminalSession.Home(folder);
        second.Press("$", "Nothing came in or went out").Press("a", "Amount  12.50").Press("Down", "How much").Press("Down", "What it is for")
            .Press("b", "For     Birthdays").Press("b", "For     Buffer").WaitFor("Kind    fee").Press("Right", "-12.50");
    }
}
