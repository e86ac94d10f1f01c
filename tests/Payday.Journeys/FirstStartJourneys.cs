namespace Payday.Journeys;

public class FirstStartJourneys
{
    private static readonly string[] ListNames = ["sources", "bills", "debts", "pots"];

    [Fact]
    public void FirstStart_FromNothing_EndsInAPrintedSlip()
    {
        using var folder = new ScratchFolder();
        string printed = folder.WithCommandThatKeeps("lp");
        using var terminal = TerminalSession.Home(folder);

        terminal.Press("Enter", "0 of 8 parts done").Press("Enter", "part 1 of 8");
        terminal.Fill("Name", "Alder flat", ">Currency").Fill("Currency", "eur", ">Numbers");
        terminal.Press("Right", "part 2 of 8").Press("Right", "part 3 of 8");
        terminal.Press("a", "! Expected").Fill("Name", "Mira, bakery", ">Expected").Fill("Expected", "1,840.50", ">Comes").Press("Down", ">Day").Fill("Day", "25", "Stored.");
        terminal.Press("Escape", "part 3 of 8").Press("Right", "part 4 of 8");
        terminal.Press("a", "! Amount").Fill("Name", "Rent", ">Amount").Fill("Amount", "640", ">Falls due").Press("Down", ">Day").Fill("Day", "1", "Stored.");
        terminal.Press("Escape", "part 4 of 8").Press("Right", "part 5 of 8").Press("Right", "part 6 of 8");
        terminal.Press("a", "! Amount").Fill("Name", "Food", ">Kind").Press("Down", ">Amount").Fill("Amount", "90", "Stored.");
        terminal.Press("Escape", "part 6 of 8").Press("Right", "part 7 of 8").Press("Right", "part 8 of 8");
        terminal.Press("Down", ">In the account").Fill("In the account", "712.40", ">Notes of 200").Press("Right", ">   Begin");
        terminal.Press("Enter", "The household is stored.");

        terminal.To(7).Press("c", "Enter close it").Press("Enter", "The payday is closed.");
        terminal.Press("v", "Ctrl+P print").Press("C-p", "Handed to the printer.");
        string papers = File.ReadAllText(printed);
        Assert.Contains("Withdrawal", papers, StringComparison.Ordinal);
        Assert.Contains("Filling sheet", papers, StringComparison.Ordinal);
        terminal.Press("Escape", "Esc leave").Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
    }

    // From an empty folder to the first open routine, each character a key: a form for each item took 974.
    [Fact]
    public void FirstStart_TypedAsLines_TakesFewKeys()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Home(folder);

        terminal.Press("Enter", "0 of 8 parts done").Press("Enter", "part 1 of 8").Press("Down", ">Currency").Fill("Currency", "usd", ">Numbers");
        terminal.Press("Right", "part 2 of 8").Press("Right", "part 3 of 8");
        foreach ((string heading, string[] lines) in QuickStart.Lists)
        {
            terminal.Press("i", $"{heading} as lines");
            foreach (string line in lines)
            {
                terminal.Type(line, line[^5..]).Press("Enter", $"Read as: {line[..line.IndexOf(' ', StringComparison.Ordinal)]}");
            }

            terminal.Press("Enter", "Right take, go on").Press("Right", "Left part before");
        }

        EndsInTheRoutine(terminal, folder);
        TestContext.Current.TestOutputHelper?.WriteLine($"{terminal.Keys} keys");
        Assert.InRange(terminal.Keys, 1, 450);
    }

    [Fact]
    public void FirstStart_PastedAsLines_IsTheSameHousehold()
    {
        using var folder = new ScratchFolder();
        using var terminal = TerminalSession.Home(folder);

        terminal.Press("Enter", "0 of 8 parts done").Press("Enter", "part 1 of 8").Press("Down", ">Currency").Fill("Currency", "usd", ">Numbers").Press("Escape", "1  Name and currency");
        terminal.Paste(QuickStart.Text, "9 lines in Bills").Press("Enter", "part 3 of 8");
        for (int part = 4; part <= 7; part++)
        {
            terminal.Press("Right", $"part {part} of 8");
        }

        EndsInTheRoutine(terminal, folder);
        TestContext.Current.TestOutputHelper?.WriteLine($"{terminal.Keys} keys");
        Assert.InRange(terminal.Keys, 1, 60);
    }

    private static void EndsInTheRoutine(TerminalSession terminal, ScratchFolder folder)
    {
        terminal.WaitFor("part 7 of 8").Press("Right", "part 8 of 8").Press("Down", ">In the account").Fill("In the account", "1200", ">Notes of 100").Press("Right", ">   Begin");
        terminal.Press("Enter", "The household is stored.").Press("Enter", Steps.Mark(1));
        terminal.Press("Escape", "Esc leave").Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
        using var household = System.Text.Json.JsonDocument.Parse(ProgramUnderTest.Run("export", "--data", folder.Data));
        Assert.Equal(QuickStart.Count, ListNames.Sum(list => household.RootElement.GetProperty(list).GetArrayLength()));
        Assert.Equal(["account", "cash"], household.RootElement.GetProperty("pots").EnumerateArray().Select(pot => pot.GetProperty("held").GetString()).Distinct().Order());
        Assert.Equal(["ladder", "reserve", "sinking", "spending"], household.RootElement.GetProperty("pots").EnumerateArray().Select(pot => pot.GetProperty("kind").GetString()).Distinct().Order());
    }

    // Half a year of CSV, a file a month in one folder: only what no statement says is typed.
    [Fact]
    public void FirstStart_FromHalfAYearOfStatements_EndsInAClosedPayday()
    {
        using var folder = new ScratchFolder();
        Directory.CreateDirectory(folder.In("bank"));
        foreach ((string name, string text) in HalfYearExport.Before(DateOnly.FromDateTime(DateTime.Now)))
        {
            File.WriteAllText(Path.Combine(folder.In("bank"), name), text);
        }

        using var terminal = TerminalSession.Home(folder);
        terminal.Press("Down", ">Begin from bank statements").Press("Enter", "No file yet").Press("Enter", "Path of a file or folder:");
        terminal.Type(folder.In("bank"), "/bank").Press("Enter", "Another path").Press("Enter", "adds up");
        terminal.Press("Right", "Found in the statements").Press("i", "Look at each");
        terminal.Press("Down", ">bill  Northlane Rent").Press("Down", ">bill  Harbour Loan Office").Press("t", "!>Owed");
        terminal.Fill("Owed", "3000", ">Yearly rate").Fill("Yearly rate, %", "5", "Stored.").Press("Escape", "0 open");
        terminal.Press("Right", "All that is needed is there").WaitFor(">7  Fill day");
        terminal.Press("Down", ">8  ").Press("Down", ">   Begin").Press("Enter", "The household is stored.");

        // What fell due before the first payday is paid by it, and the balance that was taken helps.
        terminal.To(1).Press("Down", ">From the buffer").Change("1000", "1,000.00").On(1, 7).Press("c", "Enter close it").Press("Enter", "The payday is closed.");
        terminal.Press("Escape", "Leave Payday?").Press("Enter", "[ended 0]");
    }
}
