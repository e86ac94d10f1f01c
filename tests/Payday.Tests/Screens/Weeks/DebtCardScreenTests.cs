using System.Drawing;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Screens.Cards;
using Payday.Screens.Home;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Weeks;

/// <summary>The demo household on Thursday 12 March: a purchase over several pots, and one by the card of a debt.</summary>
public sealed class DebtCardScreenTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);
    private static readonly Size Small = new(60, 20);
    private readonly DemoBook demo = new(new(2026, 3, 12));

    public DebtCardScreenTests() => demo.CloseOne();

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Form_OverSeveralPots_EntersOneAndUndoesItWhole()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("a").Type("Market hall", "54.20").Press("Ctrl+N", "Down").Pick("h").Type("14.20");
        Golden.Equal("purchase-parts-80x24", hand.Shown(Complete));
        hand.Press("Right");
        Golden.Equal("purchase-split-80x24", hand.Shown(Complete));
        hand.Press("Right");
        Golden.Equal("purchases-split-80x24", hand.Shown(Complete));
        Golden.Equal("purchases-split-60x20", hand.Shown(Small));

        hand.Press("Down", "Down", "u");
        Golden.Equal("undo-split-80x24", hand.Shown(Complete));
        hand.Press("Enter");
        Assert.All(demo.Session.Book.Weeks.Purchases, part => Assert.True(part.Undone));
    }

    [Fact]
    public void Form_SplitBeforeAnAmount_AsksForItFirst()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("a", "Ctrl+N");
        Assert.Equal("Type what the card paid first.", hand.Message);
    }

    [Fact]
    public void Parts_ThatDontAddUp_AreNotTaken()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("a").Type("Market hall", "54.20").Press("Ctrl+N", "Right");
        Assert.Equal("Two pots are without an amount; only one can have the rest.", hand.Message);
        hand.Type("60").Press("Right");
        Assert.Equal("The other parts come to 60.00; of 54.20 nothing is left for the last.", hand.Message);
        hand.Press("Down", "Ctrl+X", "Right");
        Assert.Equal("The parts come to 60.00, not to 54.20.", hand.Message);
        hand.Type("54.20").Press("Right", "Right");
        Assert.Null(Assert.Single(demo.Session.Book.Weeks.Purchases).Whole);
    }

    [Fact]
    public void Form_ChangedWhole_HasItsPartsAndCard()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("a").Type("Cake", "54.20").Press("Ctrl+N", "Down").Pick("h").Type("14.20").Press("Right", "Down", "Down").Pick("s").Press("Right");
        hand.Press("Down", "Enter");
        Golden.Equal("change-split-80x24", hand.Shown(Complete));
        hand.Press("Down").Type("60").Press("Right");

        Assert.Equal([40m, 14.20m, 45.80m, 14.20m], demo.Session.Book.Weeks.Purchases.Select(part => part.Amount.MinorUnits / 100m));
        Assert.All(demo.Session.Book.Weeks.Purchases, part => Assert.Equal(new DebtId("sofa-card"), part.Card));
    }

    // Its money waits; the payment of it stands with the due that comes next, and undone it is as if it had not been.
    [Fact]
    public void Form_ByTheCardOfADebt_WaitsForItsPayment()
    {
        Balances before = demo.Session.Book.Ledger.Balances;
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("a").Type("Tyre valve", "3.20").Pick("c").Pick("c").Press("Down", "Down").Pick("s");
        Golden.Equal("purchase-by-card-80x24", hand.Shown(Complete));
        hand.Press("Right");
        Golden.Equal("purchases-by-card-80x24", hand.Shown(Complete));
        Golden.Equal("dues-by-card-80x24", new Hand(new HomeScreen(demo.Session)).Press("q").To("Sofa card").Shown(Complete));
        hand.Press("u");
        Golden.Equal("undo-by-card-80x24", hand.Shown(Complete));
        hand.Press("Enter");
        Assert.Equal(before.All, demo.Session.Book.Ledger.Balances.All.Where(end => !end.Value.IsZero));
    }
}
