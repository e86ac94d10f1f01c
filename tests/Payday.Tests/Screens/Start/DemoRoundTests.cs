using System.Drawing;
using Payday.Commands;
using Payday.Screens.Home;
using Payday.Screens.Shell;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Start;

/// <summary>The demo household as a person who tries it out goes round it in one evening.</summary>
public sealed class DemoRoundTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);
    private readonly DemoFolder demo = new();

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Demo_ClosedThenLived_GoesThroughItsWholeRound()
    {
        Hand hand = Closed();
        Assert.Contains("Fri 6 Mar 2026", hand.Shown(Complete)[0], StringComparison.Ordinal);

        hand.Press("f", "Ctrl+A");
        Assert.Contains("8 pots filled.", hand.Message, StringComparison.Ordinal);
        hand.Press("Esc", "b", "a").Type("Corner shop", "12.40").Press("Right", "Esc");
        hand.Press("r", "c", "Enter");
        Assert.Equal("15.00 is back in the account, 2.60 of it rounding, in the buffer now.", hand.Message);
        hand.Press("w").Type("150").Press("c");
        Assert.Equal("1 pot counted, 40.00 spent.", hand.Message);
    }

    [Fact]
    public void Demo_ClosedTwice_PlaysOnTheSecondPayday()
    {
        Hand hand = Closed();
        Close(hand);
        Assert.Contains("Fri 20 Mar 2026", hand.Shown(Complete)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_TheDemo_SaysThatItIsThrownAwayAndARealOneThatItIsKept()
    {
        using var real = new DemoBook();

        Assert.Contains("thrown away", Asked(demo.Open()), StringComparison.Ordinal);
        string kept = Asked(new HomeScreen(real.Session));
        Assert.Contains("Everything entered is kept", kept, StringComparison.Ordinal);
        Assert.DoesNotContain("demo", kept, StringComparison.OrdinalIgnoreCase);
    }

    private static string Asked(Screen home)
    {
        string byEsc = string.Join('\n', new Hand(home).Press("Esc").Shown(Complete));
        Assert.Equal(string.Join('\n', new Hand(home.Leaving).Shown(Complete)), byEsc);
        return byEsc.ReplaceLineEndings(" ");
    }

    private Hand Closed()
    {
        var hand = new Hand(demo.Open());
        Close(hand);
        return hand;
    }

    private static void Close(Hand hand)
    {
        hand.Press("Enter");
        for (int step = 1; step < 7; step++)
        {
            hand.Press("Right");
        }

        hand.Press("c", "Enter");
        Assert.IsType<HomeScreen>(hand.Top);
    }
}
