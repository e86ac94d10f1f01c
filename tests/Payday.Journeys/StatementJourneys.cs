using System.Globalization;
using System.Text;

namespace Payday.Journeys;

public class StatementJourneys
{
    private const int Most = 30;

    // A month of paydays closed, and the bank's statement of it as a CSV file in the folder where the program is started.
    [Fact]
    public void MonthlyStatement_IsReconciledInUnderThirtyKeys_AndOutlivesAKilledTerminal()
    {
        using ScratchFolder folder = Lived();
        int keys;
        using (var first = TerminalSession.Home(folder))
        {
            first.Press("%", "No file yet").Press("Enter", "Path of a file or folder").Type("month", ": month").Press("Enter", "4 new or unclear")
                .WaitFor("it adds up")
                .Press("C-a", "1 line taken as proposed")
                .Press("Enter", "what it becomes").Press("Enter", "Food, by card")
                .Signal("KILL").WaitForEnd(137);
            keys = first.Keys;
        }

        using var second = TerminalSession.Home(folder);
        second.Press("%", "Food, by card").WaitFor("bank fee");
        Go(second, "Old bakery").Press("Enter", "what it becomes").Press("Enter", "The bank's statements");
        Go(second, "Quillby garden").Press("x", "left");
        second.Press("c", "Take the statement").WaitFor("9.99 less than the account here").Press("Enter", "The statement is taken.");
        Assert.InRange(keys + second.Keys, 1, Most - 1);
        second.Press("%", "No file yet").Press("u", "Take back the statement").Press("Enter", "The statement is taken back.");
    }

    private static TerminalSession Go(TerminalSession terminal, string line)
    {
        while (!terminal.Settled().Split('\n').Any(shown => shown.Contains('>', StringComparison.Ordinal) && shown.Contains(line, StringComparison.Ordinal)))
        {
            terminal.Press("Down", line);
        }

        return terminal;
    }

    private static ScratchFolder Lived()
    {
        var folder = new ScratchFolder();
        DateOnly today = WeekHousehold.Today;
        DateOnly start = today.AddDays(-30);
        string file = folder.In("household.json");
        File.WriteAllText(
            file,
            $$"""
            {"version":1,"name":"Mill lane","start":"{{WeekHousehold.Iso(start)}}","currency":"USD","notes":["20","10","5"],"fillDay":"Friday","holidays":"none",
            "opening":{"account":"900.00"},
            "sources":[{"name":"Bakery","schedule":{"kind":"fortnightly","anchor":"{{WeekHousehold.Iso(start)}}"},"shift":"none","expected":"1200.00"}],
            "pots":[{"name":"Food","kind":"spending","amount":"60.00","per":"payday","held":"cash"},{"name":"Fares","kind":"spending","amount":"20.00","per":"payday","held":"cash"}]}
            """);
        ProgramUnderTest.Run("import", file, "--data", folder.Data);
        var text = new StringBuilder("Date;Party;Amount;Balance\n");
        decimal balance = 900;
        void Show(int day, string party, decimal amount)
        {
            balance += amount;
            text.Append(CultureInfo.InvariantCulture, $"{WeekHousehold.Iso(start.AddDays(day))};{party};{amount:0.00};{balance:0.00}\n");
        }

        foreach (int payday in new[] { 0, 14, 28 })
        {
            ProgramUnderTest.Run("run", "--accept", "--data", folder.Data);
            Show(payday, "Oven bakery pay", 1200);
            Show(payday, "Cash machine 4", -80);
            if (payday == 14)
            {
                Show(16, "4711 Corner shop", -12.40m);
                Show(18, "4712 Old bakery", -6.10m);
                Show(20, "Quillby garden", -9.99m);
            }
        }

        Show(29, "Account fee", -3);
        File.WriteAllText(folder.In("month.csv"), text.ToString());
        return folder;
    }
}
