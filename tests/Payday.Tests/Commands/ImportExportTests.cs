using Payday.Store.HouseholdFiles;

namespace Payday.Tests.Commands;

public class ImportExportTests
{
    [Fact]
    public void Export_AfterImport_GivesTheFileBackExactly()
    {
        using TestShell shell = TestShell.WithDemo();
        string file = shell.Run("export").Fine().Out;
        using var other = new TestShell();

        Ran import = other.RunOn(file, "import", "-").Fine();

        Assert.Equal($"Fernhollow house is stored in {other.Data.Path}. Go on with payday run.\n", import.Out);
        Assert.Equal(file, other.Run("export").Fine().Out);
        Assert.Equal(HouseholdFile.Write(Payday.Commands.DemoCommand.Household()), file);
    }

    [Theory]
    [InlineData("\"start\": \"2026-03-05\"", "\"start\": \"2026-03-04\"", "The household started on 2026-03-05 and has a history since; leave \"start\" as it is.")]
    [InlineData("\"account\": \"3318.37\"", "\"account\": \"3318.38\"", "Opening balances are part of the ledger once a payday is closed or a pot counted; leave them as they were.")]
    public void Import_AgainstHistory_RefusesAndChangesNothing(string written, string instead, string reason)
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        string file = shell.Run("export").Fine().Out;
        string changed = file.Replace(written, instead, StringComparison.Ordinal);
        Assert.NotEqual(file, changed);

        Assert.Equal(new Ran(1, "", $"payday: {reason}\n"), shell.RunOn(changed, "import", "-"));
        Assert.Equal(file, shell.Run("export").Fine().Out);
    }

    [Fact]
    public void Import_OfAChange_KeepsClosedPaydays()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        string ledger = shell.Run("show", "ledger").Fine().Out;
        string changed = shell.Run("export").Fine().Out.Replace("\"amount\": \"205.00\"", "\"amount\": \"215.00\"", StringComparison.Ordinal);

        Ran ran = shell.RunOn(changed, "import", "-").Fine();

        Assert.Equal($"Fernhollow house is changed in {shell.Data.Path}; closed paydays stay as they are.\n", ran.Out);
        Assert.Equal(ledger, shell.Run("show", "ledger").Fine().Out);
        Assert.Contains("215 a week", shell.Run("run").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void ExportCsv_WhereOneIsThere_WritesNone()
    {
        using TestShell shell = TestShell.WithDemo();
        string folder = shell.In("csv");
        Directory.CreateDirectory(folder);
        string pots = Path.Combine(folder, "pots.csv");
        File.WriteAllText(pots, "mine");

        Ran refused = shell.Run("export", "--csv", folder);
        string[] after = Directory.GetFiles(folder);
        Ran replaced = shell.Run("export", "--csv", folder, "--replace").Fine();

        Assert.Equal(new Ran(1, "", $"payday: {pots} is already there; name another folder, or add --replace.\n"), refused);
        Assert.Equal([pots], after);
        Assert.Equal(["ledger.csv", "pots.csv", "bills.csv", "debts.csv", "statements.csv", "statement-rules.csv"], replaced.Lines[1..].Select(Path.GetFileName));
    }
}
