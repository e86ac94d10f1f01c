using System.Text.Json;
using System.Text.Json.Nodes;

namespace Payday.Tests.Commands;

public class JsonTests(DemoShell demo) : IClassFixture<DemoShell>
{
    [Theory]
    [InlineData("")]
    [InlineData("demo")]
    [InlineData("run")]
    [InlineData("slip")]
    [InlineData("slip --filling")]
    [InlineData("slip --pdf {0}/slip.pdf")]
    [InlineData("show")]
    [InlineData("show pots")]
    [InlineData("show bills")]
    [InlineData("show debts")]
    [InlineData("show calendar")]
    [InlineData("show year")]
    [InlineData("report")]
    [InlineData("report --year 2026")]
    [InlineData("report --pdf {0}/report.pdf")]
    [InlineData("ahead")]
    [InlineData("show ledger")]
    [InlineData("export")]
    [InlineData("export --csv {0}/csv")]
    [InlineData("split 70 --weeks 4 --unit 10")]
    [InlineData("debts --extra 50 --order rate")]
    [InlineData("paydays --from 2026-01-01 --to 2026-12-31")]
    [InlineData("completion bash")]
    public void Json_OfACommand_IsOneDocument(string line)
    {
        string folder = Path.GetDirectoryName(demo.Begun.Data.Path)!;

        IsOneDocument(demo.Begun.Run([.. line.Replace("{0}", folder).Split(' ', StringSplitOptions.RemoveEmptyEntries), "--json"]));
    }

    [Theory]
    [InlineData("run --one-off Shifts=20")]
    [InlineData("run --accept")]
    public void Json_OfACommandThatChanges_IsOneDocument(string line)
    {
        using TestShell shell = TestShell.WithDemo();

        IsOneDocument(shell.Run([.. line.Split(' '), "--json"]));
    }

    // The kind stays when a sentence changes, and the sentence is on the error stream as without --json.
    [Theory]
    [InlineData("run --bill Rent=5", 2, "argument.notDue", "Rent isn't due")]
    [InlineData("run --bill Rnt=5", 2, "argument.noSuchName", "there is no bill 'Rnt'")]
    [InlineData("run --bill Phones=x", 2, "amount.notAnAmount", "'x' is not an amount")]
    [InlineData("run --on 2026-03-07", 1, "routine.notAPayday", "2026-03-07 is not a payday.")]
    [InlineData("move Reserve Food 99999", 1, "move.hasLess", "")]
    [InlineData("runn", 2, "usage", "")]
    [InlineData("show nothing", 2, "usage", "WHAT nothing")]
    [InlineData("due --undo 9", 1, "", "")]
    [InlineData("import {0}/none.json", 1, "reading.notThere", "There is no file")]
    public void Json_OfARefusal_IsOneDocumentWithItsKind(string line, int exit, string kind, string part)
    {
        Ran ran = demo.Begun.Run([.. line.Replace("{0}", Path.GetDirectoryName(demo.Begun.Data.Path)!).Split(' '), "--json"]);

        JsonNode refusal = JsonNode.Parse(ran.Out)!;
        Assert.Equal((exit, exit, 1), (ran.Exit, (int)refusal["error"]!["exit"]!, (int)refusal["version"]!));
        Assert.Equal(kind.Length == 0 ? (string?)refusal["error"]!["kind"] : kind, (string?)refusal["error"]!["kind"]);
        Assert.Contains(part, string.Join(' ', refusal["error"]!["reasons"]!.AsArray()), StringComparison.Ordinal);
        Assert.StartsWith("payday: ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_OfAFolderWithoutABook_TellsItApartFromWhatWaits()
    {
        using var shell = new TestShell();

        Ran none = shell.Run("status", "--json");
        Ran waits = demo.Begun.Run("status", "--json");

        Assert.Equal((3, 3), (none.Exit, (int)JsonNode.Parse(none.Out)!["error"]!["exit"]!));
        Assert.Equal((1, true), (waits.Exit, (bool)JsonNode.Parse(waits.Out)!["waiting"]!));
    }

    [Fact]
    public void Json_OfNames_EscapesNoMoreThanItMust()
    {
        Assert.Contains("\"Renters' insurance\"", demo.Begun.Run("show", "bills", "--json").Fine().Out, StringComparison.Ordinal);
    }

    private static void IsOneDocument(Ran ran)
    {
        using JsonDocument document = JsonDocument.Parse(ran.Fine().Out);
        Assert.Equal(JsonValueKind.Object, document.RootElement.ValueKind);
        Assert.Equal(["version"], document.RootElement.EnumerateObject().Select(field => field.Name).Where(name => name == "version"));
    }
}
