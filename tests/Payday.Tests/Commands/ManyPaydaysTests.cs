using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Tests.Commands;

/// <summary>More than nine months of the demo household, a payday after the other, all proposals taken.</summary>
public class ManyPaydaysTests
{
    private const int Paydays = 30;
    private static readonly Currency Usd = Currency.FromCode("USD");

    [Fact]
    public void RunAccept_ThirtyPaydaysInARow_ClosesEachAndTheMoneyAgrees()
    {
        using TestShell shell = TestShell.WithDemo();
        for (int i = 0; i < Paydays; i++)
        {
            Ran ran = shell.Run("run", "--accept").Fine();
            Assert.Equal("Closed and stored. Print the slip with payday slip.", ran.Lines[^1]);
            Assert.All(ran.Lines, line => Assert.InRange(TextColumns.Width(line), 0, 80));
            Assert.Contains("= 0.00 left to place: all placed", ran.Out, StringComparison.Ordinal);
            NotesAddUp(shell);
        }

        MovementsAreWholeAndAgree(shell);
    }

    // Per note: in the pots = withdrawn + from home; in value: in the pots = the fills less what is kept back.
    private static void NotesAddUp(TestShell shell)
    {
        using JsonDocument slip = JsonDocument.Parse(shell.Run("slip", "--json").Fine().Out);
        JsonElement root = slip.RootElement;
        Assert.True(root.GetProperty("closed").GetBoolean());
        Dictionary<string, int> withdrawn = Counts(root.GetProperty("withdraw"));
        Assert.Equal(root.GetProperty("withdrawTotal").GetString(), Total(withdrawn).ToPlain());

        var filled = new Dictionary<string, int>();
        foreach (JsonElement part in root.GetProperty("filling").EnumerateArray())
        {
            foreach ((string note, int count) in Counts(part.GetProperty("notes")))
            {
                filled[note] = filled.GetValueOrDefault(note) + count;
            }
        }

        string[] sheet = shell.Run("slip", "--filling").Fine().Lines;
        Assert.Equal(Total(filled).ToString(NumberStyle.CommaPoint), LastWord(sheet, "In the pots"));
        Assert.Equal(Total(withdrawn).ToString(NumberStyle.CommaPoint), LastWord(sheet, "Withdrawn"));
        foreach ((string note, int count) in withdrawn)
        {
            Assert.InRange(count, 1, filled.GetValueOrDefault(note));
        }

        // The notes on hand of the demo, three twenties and two fives, are all that ever comes from home.
        Money reused = Total(filled) - Total(withdrawn);
        string first = "2026-03-06";
        Assert.Equal(root.GetProperty("payday").GetString() == first ? "70.00" : "0.00", reused.ToPlain());
    }

    private static void MovementsAreWholeAndAgree(TestShell shell)
    {
        using JsonDocument ledger = JsonDocument.Parse(shell.Run("show", "ledger", "--json").Fine().Out);
        JsonElement[] movements = [.. ledger.RootElement.GetProperty("movements").EnumerateArray()];
        Assert.Equal(Enumerable.Range(1, movements.Length), movements.Select(movement => movement.GetProperty("number").GetInt32()));

        using JsonDocument overview = JsonDocument.Parse(shell.Run("show", "--json").Fine().Out);
        foreach (string place in (string[])["account", "cash"])
        {
            Money moved = Money.Sum(movements.Select(movement => Into(movement, "to", place) - Into(movement, "from", place)), Usd);
            Money purposes = Money.Sum(
                overview.RootElement.GetProperty("purposes").EnumerateArray()
                    .Where(purpose => purpose.GetProperty("place").GetString() == place)
                    .Select(purpose => Amount(purpose.GetProperty("amount"))),
                Usd);
            Assert.Equal(overview.RootElement.GetProperty(place).GetString(), moved.ToPlain());
            Assert.Equal(moved, purposes);
        }
    }

    private static Money Into(JsonElement movement, string end, string place) =>
        movement.GetProperty(end).GetString()!.StartsWith(place + ": ", StringComparison.Ordinal)
            ? Amount(movement.GetProperty("amount"))
            : Money.Zero(Usd);

    private static Money Amount(JsonElement text) => Money.ParsePlain(text.GetString(), Usd).Value;

    private static Dictionary<string, int> Counts(JsonElement notes) =>
        notes.EnumerateObject().ToDictionary(note => note.Name, note => note.Value.GetInt32());

    private static Money Total(Dictionary<string, int> notes) =>
        Money.Sum(notes.Select(note => Money.ParsePlain(note.Key, Usd).Value * note.Value), Usd);

    private static string LastWord(string[] lines, string label) =>
        lines.Single(line => line.TrimStart().StartsWith(label + " ", StringComparison.Ordinal)).Split(' ')[^1];
}
