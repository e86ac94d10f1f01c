using Payday.Tests.Commands;

namespace Payday.Tests.Calculators;

/// <summary>The calculators' JSON as scripts get it: shape, order of keys, decimals.</summary>
public class CalculatorTests
{
    [Fact]
    public void Split_SeventyOverFourInTens_GivesTheSmallerPartLast()
    {
        using var shell = new TestShell();

        // Common practice, no source.
        string json = shell.Run("split", "70", "--weeks", "4", "--unit", "10", "--json").Fine().Out;

        Assert.Equal("{\"version\":1,\"shares\":[\"20.00\",\"20.00\",\"20.00\",\"10.00\"],\"keptBack\":\"0.00\"}\n", json);
    }

    [Fact]
    public void Split_InACurrencyWithoutDecimals_WritesNone()
    {
        using var shell = new TestShell();

        string json = shell.Run("split", "7500", "--weeks", "2", "--unit", "1000", "--currency", "JPY", "--json").Fine().Out;

        Assert.Equal("{\"version\":1,\"shares\":[\"4000\",\"3000\"],\"keptBack\":\"500\"}\n", json);
    }

    [Fact]
    public void Notes_WithNotesOnHand_WritesNotesByValueTheLargestFirst() => Check(
        "notes -",
        """
        {"currency":"USD","notes":["5","10","20","50","100"],"onHand":{"20":3,"50":1},"source":{"kind":"teller"},
         "pots":[{"name":"Food","amount":"85.00","topNote":"20","small":{"note":"5","atLeast":"20.00"}},{"name":"Fares","amount":"43.20"}]}
        """,
        """{"version":1,"pots":[{"name":"Food","notes":{"20":3,"5":5},"keptBack":"0.00"},{"name":"Fares","notes":{"20":2},"keptBack":"3.20"}],"withdraw":{"20":2,"5":5},"return":{"50":1},"withdrawTotal":"65.00","noteCount":10,"proven":true,"unmet":[]}""");

    [Fact]
    public void Notes_OfFiftyAndTwenty_NeverTakesTheLargestFirst() => Check(
        "notes -",
        """{"currency":"EUR","notes":["50","20"],"pots":[{"name":"Food","amount":"60.00"}]}""",
        """{"version":1,"pots":[{"name":"Food","notes":{"20":3},"keptBack":"0.00"}],"withdraw":{"20":3},"return":{},"withdrawTotal":"60.00","noteCount":3,"proven":true,"unmet":[]}""");

    [Fact]
    public void Notes_FromAMachine_KeepsBackWhatItCannotGive() => Check(
        "notes -",
        """{"currency":"USD","notes":["20","10"],"source":{"kind":"machine","notes":["20"],"limit":"500"},"pots":[{"name":"Food","amount":"85.00"}]}""",
        """{"version":1,"pots":[{"name":"Food","notes":{"20":4},"keptBack":"5.00"}],"withdraw":{"20":4},"return":{},"withdrawTotal":"80.00","noteCount":4,"proven":true,"unmet":[]}""");

    [Fact]
    public void Debts_TwelveMonthLoan_EndsInItsTwelfthMonth() => Check(
        "debts - --extra 0 --order balance",
        """{"currency":"USD","from":"2026-01-01","debts":[{"name":"Loan","balance":"2500.00","rate":"0.0824","minimum":{"fixed":"217.75"}}]}""",
        // numpy-financial's docstring of ppmt has 112.98 of interest; a month's interest is rounded here, which saves a cent.
        """{"version":1,"months":12,"interest":"112.97","debts":[{"name":"Loan","paidOff":"2026-12","interest":"112.97"}],"never":[]}""");

    [Fact]
    public void Debts_BelowItsInterest_IsNamedAmongThoseThatNeverEnd() => Check(
        "debts -",
        """{"currency":"USD","from":"2026-01-01","debts":[{"name":"Store card","balance":"1000.00","rate":"0.24","minimum":{"fixed":"20.00"}}]}""",
        """{"version":1,"months":0,"interest":"0.00","debts":[{"name":"Store card","paidOff":null,"interest":null}],"never":["Store card"]}""");

    [Fact]
    public void Paydays_FortnightlyFridaysOf2026_AreExtraInJanuaryAndJuly()
    {
        using var shell = new TestShell();
        string input = """{"sources":[{"name":"Wage","schedule":{"kind":"fortnightly","anchor":"2026-01-02"},"shift":"none"}]}""";

        // Computed from the calendar: 26 in the year, three in January and July.
        string[] lines = shell.RunOn(input, "paydays", "-", "--from", "2026-01-01", "--to", "2026-12-31").Fine().Lines;
        string json = shell.RunOn(input, "paydays", "-", "--from", "2026-01-30", "--to", "2026-02-13", "--json").Fine().Out;

        Assert.Equal(26, lines.Length - 2);
        Assert.Equal(["Fri 30 Jan 2026  Wage          extra payday", "Fri 31 Jul 2026  Wage          extra payday"], lines.Where(line => line.EndsWith("extra payday", StringComparison.Ordinal)));
        Assert.Equal(
            "{\"version\":1,\"paydays\":[{\"date\":\"2026-01-30\",\"sources\":[\"Wage\"],\"extra\":true},{\"date\":\"2026-02-13\",\"sources\":[\"Wage\"],\"extra\":false}]}\n", json);
    }

    // The least concave majorant of cumulative dues; the table was computed by two algorithms.
    [Theory]
    [InlineData("10 7 8 9 5 7 3", "10.00 8.00 8.00 8.00 6.00 6.00 3.00")]
    [InlineData("0 0 300 0 0 300 0 0 0 0 0 600", "100.00 100.00 100.00 100.00 100.00 100.00 100.00 100.00 100.00 100.00 100.00 100.00")]
    [InlineData("0 0 600 0 0 0 0 0 0 0 0 1200", "200.00 200.00 200.00 133.34 133.33 133.33 133.34 133.33 133.33 133.34 133.33 133.33")]
    public void SetAside_PublishedDues_AreSetAsideLevel(string dues, string setAside)
    {
        using var shell = new TestShell();
        string[] amounts = dues.Split(' ');
        string paydays = string.Join(',', amounts.Select((_, i) => $$"""{"date":"2026-{{i + 1:00}}-01","income":"1000.00"}"""));
        string list = string.Join(',', amounts.Select((amount, i) => $$"""{"bill":"Bill","date":"2026-{{i + 1:00}}-15","amount":"{{amount}}"}"""));

        string json = shell.RunOn($$"""{"currency":"USD","held":"0.00","paydays":[{{paydays}}],"dues":[{{list}}]}""", "setaside", "-", "--json").Fine().Out;

        using var answer = System.Text.Json.JsonDocument.Parse(json);
        System.Text.Json.JsonElement[] plan = [.. answer.RootElement.GetProperty("plan").EnumerateArray()];
        Assert.Equal(setAside, string.Join(' ', plan.Select(row => row.GetProperty("setAside").GetString())));
        Assert.Equal("0.00", plan[^1].GetProperty("heldAfter").GetString());
        Assert.EndsWith("\"late\":[]}\n", json, StringComparison.Ordinal);
    }

    [Fact]
    public void SetAside_MoreDueThanComesIn_SaysWhatIsLate() => Check(
        "setaside -",
        """{"currency":"USD","held":"10.00","paydays":[{"date":"2026-01-01","income":"50.00"}],"dues":[{"bill":"Rent","date":"2026-01-10","amount":"75.00"}]}""",
        """{"version":1,"plan":[{"date":"2026-01-01","due":"75.00","setAside":"50.00","heldAfter":"0.00"}],"late":[{"bill":"Rent","date":"2026-01-10","short":"15.00"}]}""");

    private static void Check(string line, string input, string json)
    {
        using var shell = new TestShell();

        Assert.Equal(json + "\n", shell.RunOn(input, [.. line.Split(' '), "--json"]).Fine().Out);
    }
}
