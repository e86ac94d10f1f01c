namespace Payday.Journeys;

/// <summary>Between the paydays of a household, up to the account held against the bank.</summary>
public class BankJourneys
{
    // Two weeks with a bill paid early, a refund and a cheque that is on its way; the bank's own fee and interest are found by its balance.
    [Fact]
    public void Month_WithFeeInterestRefundChequeAndAnEarlyBill_IsReconciledInUnder40Keys()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks(withReserve: true, WeekHousehold.Rent);
        using var terminal = TerminalSession.Home(folder);
        terminal.Press("q", "Bills and minimums").Press("Space", "Rent, paid").WaitFor("is paid then.").Press("Right", "ticked as paid.").Press("Escape", "Esc leave");
        terminal.Press("$", "Nothing came in or went out").Press("a", "Came in or went out")
            .Press("Down", ">Amount").Fill("Amount", "12.80", ">For").Press("r", "refund").Press("Right", "Came in, went out");
        terminal.Press("a", "Came in or went out").Press("w", "Went out").Press("Down", ">Amount").Fill("Amount", "45", ">For").Press("r", "For     Reserve")
            .Press("Down", ">Kind").Press("Down", ">Cheque").Fill("Cheque", "17", ">What").Press("Right", "cheque 17").Press("Escape", "Esc leave");

        // Here 600 + 1,200 less 880 fetched, 210 of rent and 45 by the cheque, and 12.80 that came back: 677.80. The bank has 45.00
        // more, as the cheque is on its way, 3.10 less by its fee and 1.25 more by its interest: 720.95.
        int before = terminal.Keys;
        terminal.Press("@", "Cash fetched").Press("C-a", "at the bank").Press("Enter", "The bank's balance:").Type("720.95", ": 720.95").Press("Enter", "43.15");
        int cheque = terminal.RowOf("cheque 17") - terminal.RowOf(">");
        for (int i = 0; i < Math.Abs(cheque); i++)
        {
            terminal.Press(cheque > 0 ? "Down" : "Up", "Account against the bank");
        }

        terminal.Press("Space", "-1.85").Press("$", "Went out").WaitFor("1.85").Press("Up", ">Amount").Fill("Amount", "3.10", ">For").Press("b", "Birthdays").Press("b", "fee").Press("Right", "Account against the bank");
        terminal.Press("Space", "1.25").Press("$", "Came in").Press("b", "Bakery").Press("b", "Birthdays").Press("b", "interest").Press("Right", "Account against the bank");
        terminal.Press("Space", "It agrees").Press("c", "Agreed with the bank on");
        Assert.InRange(terminal.Keys - before, 1, 39);
    }

    // A wage that is lower than usual: the buffer, which keeps 100, gives the rest, and no pot is cut.
    [Fact]
    public void ShortPayday_IsCarriedByTheBuffer()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks(more: ""","bufferKeeps":"100.00" """);
        using var terminal = TerminalSession.Home(folder);
        terminal.Press("Enter", Steps.Mark(1)).Change("700", "*700.00").WaitFor("180.00");
        Assert.Contains("From the buffer", terminal.Settled(), StringComparison.Ordinal);
        terminal.On(1, 4);
        Assert.Contains("880.00", terminal.Settled(), StringComparison.Ordinal);
        Assert.DoesNotContain("!", terminal.Shown, StringComparison.Ordinal);
        terminal.On(4, 7).Press("c", "Enter close it").Press("Enter", "The payday is closed.");
        terminal.Press("Down", "buffer 240.00");
    }

    // The teller has other notes than the slip asks for: they are entered, and the sheet is made anew; then all is taken back.
    [Fact]
    public void Teller_GivesOtherNotes_AndTheFillingIsMadeAnew()
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks();
        using var terminal = TerminalSession.Home(folder);
        terminal.Press("v", "20 x 40").WaitFor("20 10 Amount").Press("Escape", "Esc leave");
        terminal.Press("f", "8 pots to fill").Press("g", "Notes of 20 40")
            .Fill("Notes of 20", "30", ">Notes of 10").Fill("Notes of 10", "20", ">Notes of 5").Fill("Notes of 5", "16", ">Fetched on")
            .Press("Right", "The filling sheet is made anew");
        terminal.Press("v", "20 10 5 Amount").Press("Escape", "Esc leave");
        terminal.Press("f", "8 pots to fill").Press("g", "Notes of 20 30").Press("u", "Take back the notes received").Press("Enter", "Taken back");
        terminal.Press("v", "20 10 Amount").Press("Escape", "Esc leave").Press("f", "8 pots to fill").Press("g", "Notes of 20 40");
    }

    [Fact]
    public void Entry_Killed_IsThereAgain() => Killed(
        terminal => terminal.Press("$", "Nothing came in or went out").Press("a", "Came in or went out").Press("w", "Went out").Press("Down", ">Amount").Fill("Amount", "12.50", ">For").Press("r", "For     Reserve"),
        again => again.Press("$", "Nothing came in or went out").Press("a", "Amount  12.50").WaitFor("Went out").WaitFor("For     Reserve").Press("Right", "12.50"));

    [Fact]
    public void Due_Killed_IsThereAgain() => Killed(
        terminal => terminal.Press("q", "Bills and minimums").Press("Space", "Rent, paid").Fill("Amount", "200", ">Day"),
        again => again.Press("q", "Bills and minimums").Press("Space", "Amount  200.00").Press("Right", "10.00 is still to pay"));

    [Fact]
    public void Reconciliation_Killed_IsThereAgain() => Killed(
        terminal => terminal.Press("@", "Cash fetched").Press("Space", "at the bank ").Press("Enter", "The bank's balance:").Type("1800", ": 1800").Press("Enter", "1,800.00"),
        again => again.Press("@", "1,800.00").WaitFor("difference").WaitFor("0.00"));

    private static void Killed(Func<TerminalSession, TerminalSession> begins, Action<TerminalSession> goesOn)
    {
        using ScratchFolder folder = new ScratchFolder().WithWeeks(withReserve: true, WeekHousehold.Rent);
        using (var first = TerminalSession.Home(folder))
        {
            begins(first).Signal("KILL").WaitForEnd(137);
        }

        using var second = TerminalSession.Home(folder);
        goesOn(second);
    }
}
