using System.Text.Json.Nodes;
using Payday.Screens.Home;
using Payday.Screens.Shell;
using Payday.Store;
using Payday.Tests.Screens;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Commands;

/// <summary>The demo's payday with another decision at each step, by commands and by the full screen's keys.</summary>
[Collection(OneTerminal.Name)]
public sealed class SameBookTests
{
    [Fact]
    public void Routine_ByCommandsAndByScreen_EndsInTheSameBook()
    {
        using TestShell commands = TestShell.WithDemo();
        commands.Run(
            "run", "--income", "Odette, joinery=2300.50", "--one-off", "Cake sale=15.50",
            "--bill", "Phones=81.50", "--paid", "Phones", "--debt", "Sofa card=60", "--paid", "Car loan",
            "--pot", "Fuel=95", "--place", "Reserve=46", "--notes", "Eating out=10=7", "--accept").Fine();

        using TestShell screen = TestShell.WithDemo();
        OnScreen(screen, hand =>
        {
            hand.Press("Enter").To("Odette").Press("Enter").Type("2300.50").Press("a").Type("Cake sale=15.50");
            hand.Press("Right").To("Phones").Press("Enter").Type("81.50").Press("Space");
            hand.Press("Right").To("Sofa card").Press("Enter").Type("60").To("Car loan").Press("Space");
            hand.Press("Right").To("Fuel").Press("Enter").Type("95");
            hand.Press("Right").To("Reserve").Press("Enter").Type("46");
            hand.Press("Right").To("Eating out").Press("Tab", "Tab", "Enter").Type("0").Press("Tab", "Enter").Type("7");
            hand.Press("Right", "c", "Enter");
        });

        Assert.Equal(Stored(screen), Stored(commands));
        Assert.Equal(screen.Run("show", "ledger", "--whole").Fine().Out, commands.Run("show", "ledger", "--whole").Fine().Out);
    }

    private static void OnScreen(TestShell shell, Action<Hand> work)
    {
        using BookStore store = BookStore.Open(shell.Data);
        work(new Hand(new HomeScreen(new BookSession(store, store.Load()!, () => shell.Today))));
    }

    // Each record as it is, but for the step that the screen was at.
    private static SortedDictionary<string, string> Stored(TestShell shell)
    {
        var records = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (JsonNode? edit in File.ReadLines(shell.Data.Journal).SelectMany(line => JsonNode.Parse(line)!["edits"]!.AsArray()))
        {
            if ((string?)edit!["put"] is { } kind)
            {
                records[$"{kind} {edit["doc"]!["_id"]}"] = edit["doc"]!.ToJsonString().Replace("\"step\":\"Slip\"", "\"step\":\"Income\"", StringComparison.Ordinal);
            }
            else
            {
                Assert.True(records.Remove($"{edit["del"]} {edit["id"]}"));
            }
        }

        return records;
    }
}
