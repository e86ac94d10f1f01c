namespace Payday.Journeys;

/// <summary>One routine with a decision changed at each step, on the full screen, line by line and by commands: the same book.</summary>
public class ThreeWaysJourneys
{
    private static readonly string[] Asked =
    [
        "2200", "Gift=50", "", "10",
        "70 paid", "", "", "", "", "when due",
        "40", "paid",
        "390", .. Enumerable.Repeat("", 14), "20",
        "Sofa card=30", "Reserve", "",
        "notes", "20=7,10=3,5=5", .. Enumerable.Repeat("", 17),
        "yes",
    ];

    private static readonly string[] Decided =
    [
        "--income", "Odette, joinery=2200", "--one-off", "Gift=50", "--buffer", "10",
        "--bill", "After-school club@2026-03-09=70", "--paid", "After-school club=2026-03-09", "--set-asides", "when-due",
        "--debt", "Sofa card=40", "--paid", "Car loan",
        "--pot", "Food=390", "--pot", "Piano fund=20",
        "--place", "Sofa card=30", "--place", "Reserve=rest",
        "--notes", "Food@2026-03-06=20=7,10=3,5=5",
    ];

    [Fact]
    public void Demo_ADecisionChangedAtEachStep_EndsInTheSameBookEachWay()
    {
        using ScratchFolder screen = new ScratchFolder().WithDemoHousehold();
        using ScratchFolder asked = new ScratchFolder().WithDemoHousehold();
        using ScratchFolder decided = new ScratchFolder().WithDemoHousehold();

        OnTheFullScreen(screen);
        LineByLine(asked);
        ByCommands(decided);

        string book = Everything(screen);
        Assert.Contains("Gift", book, StringComparison.Ordinal);
        Assert.Equal(book, Everything(asked));
        Assert.Equal(book, Everything(decided));
    }

    private static void OnTheFullScreen(ScratchFolder folder)
    {
        using var terminal = TerminalSession.Home(folder);
        terminal.To(1).Change("2200", "*2,200.00").Press("a", "One-off").Type("Gift=50", ": Gift=50").Press("Enter", "*50.00");
        Row(terminal, "From the buffer").Change("10", "+ 10.00 buffer").On(1, 2);
        Row(terminal, "After-school club").Change("70", "*70.00").Press("Space", " paid").Press("=", "Enter do it").Press("Enter", "- 0.00 bills").On(2, 3);
        Row(terminal, "Sofa card").Change("40", "*40.00");
        Row(terminal, "Car loan").Press("Space", "Paid: closing the payday").On(3, 4);
        Row(terminal, "Food").Change("390", "*390.00");
        Row(terminal, "Piano fund").Change("20", "*20.00").On(4, 5);
        Row(terminal, "Sofa card").Change("30", "*30.00");
        Row(terminal, "Reserve").Press("Space", "0.00, all placed").On(5, 6);
        Row(terminal, "Food").Press("Tab", "Food");
        foreach ((string note, string pieces) in new[] { ("20", "7"), ("10", "3") })
        {
            terminal.Press("Tab", "Food").Press("Enter", $"How many {note} for Food").Type(pieces, ": " + pieces).Press("Enter", $"{pieces} x {note}");
        }

        terminal.On(6, 7);
        terminal.Press("c", "Enter close it").Press("Enter", "The payday is closed.").Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
    }

    private static void LineByLine(ScratchFolder folder)
    {
        string lines = folder.In("lines");
        File.WriteAllLines(lines, Asked);
        Assert.Contains("The payday is closed.", ProgramUnderTest.RunWith(lines, "ask", "payday", "--data", folder.Data), StringComparison.Ordinal);
    }

    // What is decided first is kept for the run that closes the payday.
    private static void ByCommands(ScratchFolder folder)
    {
        ProgramUnderTest.Run(["run", .. Decided[..12], "--keep", "--data", folder.Data]);
        ProgramUnderTest.Run(["run", .. Decided[12..], "--accept", "--data", folder.Data]);
    }

    private static TerminalSession Row(TerminalSession terminal, string label)
    {
        while (!terminal.Settled().Contains(">" + label, StringComparison.Ordinal))
        {
            terminal.Press("Down", ">");
            Assert.InRange(terminal.Keys, 0, 200);
        }

        return terminal;
    }

    // All tables of the book, what it is for, and its papers.
    private static string Everything(ScratchFolder folder)
    {
        string Said(params string[] arguments) => ProgramUnderTest.Run([.. arguments, "--data", folder.Data]);
        string tables = folder.In("tables");
        Said("export", "--csv", tables);
        return string.Join('\n',
        [
            .. Directory.GetFiles(tables).Order(StringComparer.Ordinal).Select(file => Path.GetFileName(file) + "\n" + File.ReadAllText(file)),
            Said("export"), Said("show", "--json"), Said("slip"), Said("slip", "--filling"), Said("fill"), Said("due"), Said("ahead"),
        ]);
    }
}
