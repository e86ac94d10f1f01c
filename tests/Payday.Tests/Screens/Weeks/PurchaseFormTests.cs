using System.Drawing;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Screens.Cards;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Weeks;

/// <summary>What is typed of a card purchase is in the book at once: the terminal may go, and it is the same one line by line.</summary>
public sealed class PurchaseFormTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);

    private readonly DemoBook demo = new(new LocalDate(2026, 3, 13));

    public PurchaseFormTests() => demo.CloseOne();

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Form_OpenedAgain_StandsAsItWasLeft()
    {
        Hand hand = On().Type("Corner shop", "12.50+3");
        hand.To("Pot").Pick("h");
        hand.To("Day").Type("yesterday");
        string[] left = hand.Shown(Complete);

        Assert.Equal(
            [("amount", "12.50+3"), ("day", "2026-03-12"), ("pots", "Household goods"), ("what", "Corner shop")],
            Assert.Single(demo.Stored.Weeks.Forms).Texts.Select(text => (text.Key, text.Value)));
        Assert.Equal(left[2..10], On().To("Day").Shown(Complete)[2..10]);
    }

    [Fact]
    public void Form_SplitOverPots_IsKeptWithItsParts()
    {
        Hand hand = On().Type("Corner shop", "30");
        hand.Press("Ctrl+N").Type("10").Press("Right");
        string[] left = hand.Shown(Complete);
        Assert.Contains(left, line => line.Contains("10.00", StringComparison.Ordinal) && line.Contains("20.00", StringComparison.Ordinal));

        On().Press("Right");
        Assert.Equal([1_000L, 2_000L], demo.Stored.Weeks.Purchases.Select(part => part.Amount.MinorUnits).Order());
        Assert.Empty(demo.Stored.Weeks.Forms);
        Assert.Contains("Amount   -", string.Join('\n', On().Shown(Complete)), StringComparison.Ordinal);
    }

    [Fact]
    public void Form_LineByLine_GoesOnWithIt()
    {
        On().Type("Corner shop", "12.50");

        Assert.Equal("What was it? \"Corner shop\" as you said.", new Payday.Questions.PurchasePart(demo.Session).Questions[0].Text);
    }

    [Fact]
    public void Form_Forgotten_BeginsEmpty()
    {
        Hand hand = On().Type("Corner shop", "12.50");
        Assert.Contains(hand.Top.Bindings, binding => binding.Name == "Del");
        hand.Press("Del");

        Assert.Empty(demo.Stored.Weeks.Forms);
        Assert.DoesNotContain("Corner shop", string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
    }

    // A purchase that is there stays as it is until it is changed as a whole.
    [Fact]
    public void Change_OfAPurchase_KeepsNothing()
    {
        demo.Session.Take(Purchasing.Enter(demo.Session.Book, new PurchaseEntry(new(2026, 3, 12), demo.Household.Pots[0].Id, Core.Amounts.Money.FromMinorUnits(1_250, demo.Household.Currency), "shop")).Value!);
        var hand = new Hand(new PurchaseForm(demo.Session, demo.Session.Book.Weeks.Purchases[0]));
        hand.Type("Bakery");

        Assert.Empty(demo.Stored.Weeks.Forms);
        Assert.DoesNotContain(hand.Top.Bindings, binding => binding.Name == "Del");
    }

    // As if it had not been said.
    [Fact]
    public void Form_OfAPotThatIsGone_IsOfTheFirst()
    {
        On().Type("Corner shop", "12.50");
        Book book = demo.Session.Book;
        demo.Session.Take(book with { Weeks = book.Weeks.With(new FormDraft(SaidPurchase.Form, book.Weeks.FormOf(SaidPurchase.Form)!.Texts.Add(SaidPurchase.PotsField, "Nowhere").Add(SaidPurchase.CardField, "nobody"))) });

        Assert.Contains(demo.Household.Pots[0].Name, On().Shown(Complete).First(line => line.Contains("Pot ", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    private Hand On() => new(new PurchaseForm(demo.Session, null));
}
