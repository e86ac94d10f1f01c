using System.Text.Json;
using NodaTime;
using Payday.Tests.Slips;

namespace Payday.Tests.Commands;

/// <summary>One purchase over several pots, and one by the card of a debt, on the command line.</summary>
public class SplitPurchaseCommandTests
{
    private static readonly LocalDate Thursday12 = new(2026, 3, 12);

    [Fact]
    public void Spend_OverSeveralPots_IsOnePurchaseUndoneWhole()
    {
        using TestShell shell = Closed();

        Golden.Equal("spend-parts", shell.Run("spend", "Food=40", "Household goods", "--total", "54.20", "--what", "Market hall").Fine().Lines);
        Golden.Equal("spend-parts-ledger", shell.Run("show", "ledger").Fine().Lines[^4..]);
        Assert.Contains("  Food and Household goods, Market hall  ", shell.Run("reconcile").Fine().Out, StringComparison.Ordinal);
        Assert.Equal("Taken back.", shell.Run("spend", "--undo", "2").Fine().Lines[^1]);
        Assert.Equal(new Ran(1, "", "payday: Card purchase 1 is undone already.\n"), shell.Run("spend", "--undo", "1"));
    }

    [Theory]
    [InlineData("Food", "12.40")]
    [InlineData("Food=12.40")]
    [InlineData("Food=10+2.40")]
    [InlineData("Food", "--total", "12.40")]
    public void Spend_OnOnePot_IsTheSameHoweverItIsSaid(params string[] said)
    {
        using TestShell shell = Closed();

        JsonElement one = Assert.Single(JsonDocument.Parse(shell.Run(["spend", .. said, "--json"]).Fine().Out).RootElement.GetProperty("purchases").EnumerateArray());
        Assert.Equal(("Food", "12.40", JsonValueKind.Null), (one.GetProperty("pot").GetString(), one.GetProperty("amount").GetString(), one.GetProperty("whole").ValueKind));
    }

    // 25 of the pay went to the minimum; what the card paid comes on top of it on the next payday.
    [Fact]
    public void Spend_ByTheCardOfADebt_WaitsForItsNextPayment()
    {
        using TestShell shell = Closed();
        shell.Run("reconcile", "--balance", "0").Fine();
        string lines = shell.Run("reconcile").Fine().Out;
        Golden.Equal("spend-card", shell.Run("spend", "Car repairs=3.20", "Food=8", "--card", "sofa card", "--what", "Cake").Fine().Lines);
        Assert.Equal(lines, shell.Run("reconcile").Fine().Out);

        shell.Run("return", "--confirm").Fine();
        shell.Today = new LocalDate(2026, 3, 20);
        JsonElement row = JsonDocument.Parse(shell.Run("run", "--json").Fine().Out).RootElement.GetProperty("debts").EnumerateArray().First(debt => debt.GetProperty("name").GetString() == "Sofa card");
        Assert.Equal("11.20", row.GetProperty("bought").GetString());
    }

    [Fact]
    public void SpendList_ByTheCardOfADebt_WithALineOverTwoPots_IsStored()
    {
        using TestShell shell = Closed();
        shell.File("list", "2026-03-07, 54.20, Market hall\n2026-03-08, 4, Chemist\n");
        string[] wish = ["spend", "--list", shell.In("list"), "--card", "Sofa card", "--pot", "1=Food=40", "--pot", "1=Household goods", "--pot", "2=buffer"];

        Golden.Equal("spend-list-parts", shell.Run(wish).Fine().Lines);
        Golden.Equal("spend-list-parts-stored", shell.Run([.. wish, "--accept"]).Fine().Lines);
    }

    private static TestShell Closed()
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Today = Thursday12;
        return shell;
    }
}
