using System.Text.Json;
using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Commands;

public class LearnCommandTests
{
    // On the day of the shell: the months from September 2025 on, of an account that is made up.
    [Fact]
    public void Learn_HalfAYear_IsAsRecorded()
    {
        using var shell = new TestShell();

        Ran ran = shell.Run(["learn", .. Files(shell)]).Fine();

        Assert.All(ran.Lines, line => Assert.InRange(TextColumns.Width(line), 0, 80));
        Golden.Equal("learn", ran.Lines);
        Assert.False(Directory.Exists(shell.Data.Path));
    }

    [Fact]
    public void Learn_Json_HasSchedulesAmountsHitsAndChanges()
    {
        using var shell = new TestShell();

        using var json = JsonDocument.Parse(shell.Run(["learn", .. Files(shell), "--json"]).Fine().Out);

        JsonElement root = json.RootElement;
        Assert.Equal(JsonValueKind.Null, root.GetProperty("household").ValueKind);
        JsonElement internet = root.GetProperty("bills").EnumerateArray().Single(bill => bill.GetProperty("name").GetString() == "Farnet Internet");
        Assert.Equal(
            """{"name":"Farnet Internet","schedule":{"kind":"monthly","day":12},"usual":"34.00","hold":"34.00","hits":6,"expected":6,"first":"2025-09-12","last":"2026-02-12","changes":[{"kind":"amount","since":"2026-01-12","more":"4.00"}]}""",
            internet.GetRawText());
        Assert.Equal(["2025-09", "2025-10", "2025-11", "2025-12", "2026-01", "2026-02"], root.GetProperty("months").EnumerateArray().Select(month => month.GetProperty("month").GetString()));
    }

    // The household is looked at, not opened: it could be open elsewhere, and nothing of it is another afterwards.
    [Fact]
    public void Learn_WithAHousehold_SaysWhereItDiffersAndLeavesItAlone()
    {
        using var shell = new TestShell();
        string household = shell.File("household.json", Household);
        shell.Run("import", household).Fine();
        byte[] before = File.ReadAllBytes(shell.Data.Database);

        Ran ran = shell.Run(["learn", .. Files(shell)]).Fine();

        Assert.Contains(
            """
            Beside the household Alder flat:
              Harbour Loan Office takes 120.00 and is no bill here.
              Brightwire Power takes 59.00 and is no bill here.
              Locker: no line since Mon 3 Nov 2025.
              Internet is 30.00 here and 34.00 at the bank since Mon 12 Jan 2026.
              Choir: no line at all.

            """,
            ran.Out,
            StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(shell.Data.Database));
    }

    [Fact]
    public void Learn_OfAFewWeeks_SaysThatItTakesMore()
    {
        using var shell = new TestShell();

        Ran ran = shell.Run(["learn", .. Files(shell).TakeLast(2)]);

        Assert.Equal((1, ""), (ran.Exit, ran.Out));
        Assert.Contains("Habits show from three months on: add earlier ones.", ran.Error, StringComparison.Ordinal);
    }

    // The first days of a month say neither order; the other months of the same header do.
    [Fact]
    public void Learn_FilesOfOneHeader_SayToEachOtherHowTheyAreRead()
    {
        using var shell = new TestShell();
        string[] files = [.. Files(shell, date => $"{date[8..10]}/{date[5..7]}/{date[..4]}")];
        File.WriteAllLines(files[2], [.. File.ReadLines(files[2]).Where(line => line.StartsWith("Date", StringComparison.Ordinal) || string.CompareOrdinal(line[..2], "12") <= 0)]);

        Assert.Contains("doesn't say which figure is the day", shell.Run("learn", files[2]).Error, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(shell.Run(["learn", .. files, "--json"]).Fine().Out);
        Assert.Equal("2026-03-04", json.RootElement.GetProperty("to").GetString());
    }

    [Theory]
    [InlineData(2, "--currency XYZ: that is no currency known here", "--currency", "XYZ")]
    [InlineData(1, "There is no booked line in USD in these files.", "--currency", "USD")]
    [InlineData(1, "There is no file nowhere.csv.", "nowhere.csv")]
    public void Learn_WrongWords_AreRefusedWithASentence(int exit, string sentence, params string[] words)
    {
        using var shell = new TestShell();

        Ran ran = shell.Run(["learn", .. Files(shell), .. words]);

        Assert.Equal((exit, ""), (ran.Exit, ran.Out));
        Assert.Contains(sentence, ran.Error, StringComparison.Ordinal);
    }

    internal const string Household = """
        {"version":1,"name":"Alder flat","currency":"EUR","start":"2025-09-01","fillDay":"Friday","holidays":"none",
        "sources":[{"name":"Tidewater","expected":"1840.50","schedule":{"kind":"monthly","day":25},"shift":"after"}],
        "bills":[{"name":"Rent","amount":"640.00","schedule":{"kind":"monthly","day":1},"shift":"after","essential":true},
        {"name":"Internet","amount":"30.00","schedule":{"kind":"monthly","day":12},"shift":"after","essential":false},
        {"name":"Locker","amount":"42.00","schedule":{"kind":"monthly","day":3},"shift":"after","essential":false},
        {"name":"Choir","amount":"15.00","schedule":{"kind":"monthly","day":20},"shift":"after","essential":false}],
        "opening":{"account":"0.00"}}
        """;

    private static IEnumerable<string> Files(TestShell shell, Func<string, string>? date = null) => HalfYearExport
        .Before(new DateOnly(shell.Today.Year, shell.Today.Month, shell.Today.Day))
        .Select(file => shell.File(file.Name, string.Concat(file.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select((line, i) => (i == 0 || date is null ? line : date(line[..10]) + line[10..]) + "\n"))));
}
