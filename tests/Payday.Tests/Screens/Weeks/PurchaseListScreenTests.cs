using System.Drawing;
using Payday.Screens.Cards;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Weeks;

/// <summary>The demo household on Friday 13 March, with purchases from a list.</summary>
public sealed class PurchaseListScreenTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);
    private readonly DemoBook demo = new(new(2026, 3, 13));

    public PurchaseListScreenTests() => demo.CloseOne();

    public void Dispose() => demo.Dispose();

    [Fact]
    public void List_Pasted_GuessesPotsAndIsEnteredWhole()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("a").Type("Corner shop", "12.40").Press("Right", "i");
        hand.Top.Pasted("2026-03-10, 8.20, CORNER SHOP 0042\r\n2026-03-11; 30; Tyres\nnonsense\n");
        Golden.Equal("purchase-list-80x24", hand.Shown(Complete));
        hand.To("Tyres").Pick("f").Pick("f").Press("Right");
        Assert.Equal("1 line not read: leave it out with Ctrl+X, or paste a mended list. Nothing is written.", hand.Message);
        hand.Press("Ctrl+X", "Right");

        Assert.Equal(3, demo.Session.Book.Weeks.Purchases.Count);
        Assert.Equal("food", demo.Session.Book.Weeks.Purchases[1].PotId?.Text);
    }

    // Thousands of lines that are no list at all: one key drops them, after a question.
    [Fact]
    public void List_OfNonsense_IsForgottenByOneKey()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("i");
        hand.Top.Pasted(string.Join('\n', Enumerable.Range(1, 3_000).Select(i => $"nonsense {i}")));
        Assert.Contains(hand.Shown(Complete), line => line.Contains("Del forget all", StringComparison.Ordinal));

        hand.Press("Del");
        Assert.Contains(hand.Shown(Complete), line => line.Contains("Forget 3000 lines of the list?", StringComparison.Ordinal));
        Assert.Contains("3000 lines not read", string.Join(' ', hand.Press("Esc").Shown(Complete)), StringComparison.Ordinal);
        hand.Press("Del", "Enter");

        Assert.Contains(hand.Shown(Complete), line => line.Contains("Paste the list here", StringComparison.Ordinal));
        Assert.DoesNotContain(hand.Top.Bindings, key => key.Name == "Del");
        Assert.Empty(demo.Session.Book.Weeks.Purchases);
    }

    [Fact]
    public void List_LineWithoutAPot_IsNotEnteredAndNotTheBuffers()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("i");
        hand.Top.Pasted("2026-03-10, 8.20, Corner shop 12\n2026-03-11, 4, Bus\n2026-03-12, 9, CORNER SHOP 15\n");

        hand.Press("Right");
        Assert.Equal("3 lines without a pot: pick one, or leave the line out with Ctrl+X. Nothing is written.", hand.Message);
        Assert.Empty(demo.Session.Book.Weeks.Purchases);

        hand.Press("Up").Pick("f");
        Golden.Equal("purchase-list-shop-80x24", hand.Shown(Complete));
        hand.Press("Right");
        Assert.Equal("1 line without a pot: pick one, or leave the line out with Ctrl+X. Nothing is written.", hand.Message);
        hand.Press("Ctrl+X", "Right");

        Assert.Equal(2, demo.Session.Book.Weeks.Purchases.Count);
        Assert.Single(demo.Session.Book.Weeks.Purchases.Select(purchase => purchase.PotId).Distinct());
    }

    [Fact]
    public void List_MoneyThatCameIn_IsARefundOrLeftOut()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("a").Type("Corner shop", "12.40").Press("Right", "i");
        hand.Top.Pasted("2026-03-10;-4;Bus\n2026-03-13;5.00;CORNER SHOP 0042\n2026-03-12;900;Wage\n2026-03-10;-3;Bus\n");
        hand.To("Bus").Pick("f");
        Golden.Equal("purchase-list-refund-80x24", hand.Shown(Complete));
        hand.To("Wage").Press("Ctrl+X", "Right");

        Assert.Equal([12.40m, 4m, 3m, -5m], demo.Session.Book.Weeks.Purchases.Select(purchase => purchase.Amount.MinorUnits / 100m));
        Golden.Equal("purchases-refund-80x24", hand.Shown(Complete));
    }

    [Fact]
    public void List_LineOverTwoPots_ByTheCardOfADebt_IsEnteredAsOne()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("i");
        hand.Top.Pasted("2026-03-10, 54.20, Market hall\n2026-03-11, 4, Bus\n");
        hand.Press("Ctrl+N", "Down").Pick("h").Type("14.20");
        Golden.Equal("purchase-list-split-80x24", hand.Shown(Complete));
        hand.Press("Right");
        Assert.Contains("Food, Household goods", string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
        hand.To("Bus").Press("Ctrl+X").Press("Ctrl+B").To("Sofa card").Press("Enter");
        Golden.Equal("purchase-list-by-card-80x24", hand.Shown(Complete));
        hand.Press("Right");

        Assert.Equal([(40m, "food"), (14.20m, "household-goods")], demo.Session.Book.Weeks.Purchases.Select(part => (part.Amount.MinorUnits / 100m, part.PotId!.Value.Text)));
        Assert.All(demo.Session.Book.Weeks.Purchases, part => Assert.Equal((1L, "sofa-card"), (part.Whole, part.Card!.Value.Text)));
    }

    [Fact]
    public void List_FromAFile_SaysWhatIsInTheWay()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Devices are files on Unix.");
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("i", "Ctrl+F");

        Assert.Equal("/dev/zero is a device; name a file, or pass its content on with -.", hand.Try("/dev/zero"));
    }

    [Fact]
    public void List_LinesNotRead_AreEachShownAndCanBeLeftOut()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("i");
        hand.Top.Pasted("2026-11-31, 8.20, Shop\n2026-03-10, much, Shop\n2026-03-11, 30, Tyres\n");
        string[] first = hand.Shown(Complete);
        Assert.Contains("2 lines not read", first[0], StringComparison.Ordinal);
        Assert.Contains(first, line => line.Contains("Line 1: '2026-11-31': November 2026 has 30 days.", StringComparison.Ordinal));
        Assert.Contains(hand.Press("Down").Shown(Complete), line => line.Contains("Line 2: 'much' is not an amount", StringComparison.Ordinal));
        Assert.DoesNotContain(hand.Top.Bindings, key => key.Name == "Enter");
        hand.Press("Ctrl+X", "Up", "Ctrl+X").Pick("f").Pick("f").Press("Right");
        Assert.Single(demo.Session.Book.Weeks.Purchases);
    }
}
