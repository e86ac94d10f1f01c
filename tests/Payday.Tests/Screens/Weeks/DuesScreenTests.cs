using System.Drawing;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Status;
using Payday.Screens.Dues;
using Payday.Screens.Home;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Weeks;

/// <summary>The demo household on Friday 13 March, after its payday of 6 March was closed.</summary>
public sealed class DuesScreenTests : IDisposable
{
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 13));

    public DuesScreenTests() => demo.CloseOne();

    public void Dispose() => demo.Dispose();

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Dues_OneTickedOneInPart_AreAsRecorded(int width, int height)
    {
        Hand hand = On();
        hand.To("Sofa card").Press("Space", "Right");
        hand.To("Fiddle lessons").Press("Space").Type("20", "12 Mar").Press("Right");
        Golden.Equal($"dues-{width}x{height}", hand.Shown(new Size(width, height)));
    }

    [Fact]
    public void Space_ThenRight_TicksAllOfItToday()
    {
        Hand hand = On().To("Sofa card");
        DueLine due = DueLines.Of(demo.Session.Book, new(2026, 3, 20)).First(line => line.Name == "Sofa card");

        hand.Press("Space", "Right");

        DuePayment paid = Assert.Single(demo.Session.Book.Weeks.Payments);
        Assert.Equal((due.Key, due.Rest, new LocalDate(2026, 3, 13), true), (paid.Key, paid.Amount, paid.Date, paid.Completes));
        Assert.Equal("36.92 to Sofa card ticked as paid.", hand.Message);
    }

    [Fact]
    public void Space_AnotherAmountAndDay_PaysAPart()
    {
        Hand hand = On().To("Fiddle lessons").Press("Space").Type("20", "12 Mar").Press("Right");

        DuePayment paid = Assert.Single(demo.Session.Book.Weeks.Payments);
        Assert.Equal((new LocalDate(2026, 3, 12), false), (paid.Date, paid.Completes));
        Assert.Equal("20.00 paid; 25.00 is still to pay. x frees it.", hand.Message);
        hand.To("rest to pay").Press("x", "Enter");
        Assert.True(demo.Session.Book.Weeks.Payments[^1].Completes);
    }

    // The demo's payday puts 246.46 more on the dental plan than its minimum: by hand, outside of the program.
    [Fact]
    public void Space_OnWhatIsPaidByOneself_SaysThatItIs_AndAgainThatItIsnt()
    {
        Hand hand = On().To("extra");
        Assert.Equal("paid", Word(hand));

        hand.Press("Space");
        Assert.True(Assert.Single(PaymentToMake.All(demo.Session.Book)).IsSaid);
        Assert.Empty(PaymentToMake.Of(demo.Session.Book));
        hand.To("extra");
        Assert.Equal("not paid", Word(hand));

        hand.Press("Space");
        Assert.False(Assert.Single(PaymentToMake.All(demo.Session.Book)).IsSaid);
        Assert.Equal("paid", Word(hand.To("extra")));
        Assert.Empty(demo.Session.Book.Weeks.Payments);

        static string Word(Hand hand) => hand.Top.Bindings.Single(key => key.Name == "Space").Label;
    }

    // What it would do is there before it is written: 36 of the buffer where the bill asks for more than is held.
    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Space_MoreThanIsHeld_IsAsRecorded(int width, int height) =>
        Golden.Equal($"due-{width}x{height}", On().To("Phones").Press("Space").Type("110").Shown(new Size(width, height)));

    [Theory]
    [InlineData("2026-03-14", "Sat 14 Mar 2026 has not come yet; write today or a day before.")]
    [InlineData("soon", null)]
    public void Space_ADayThatCantBe_IsSaidAndNothingIsWritten(string typed, string? said)
    {
        string? fault = On().To("Fiddle lessons").Press("Space").To("Day").Try(typed);
        Assert.NotNull(fault);
        Assert.Equal(said ?? fault, fault);
        Assert.Empty(demo.Session.Book.Weeks.Payments);
    }

    [Fact]
    public void Space_AnAmountThatCantBe_IsSaidAndNothingIsWritten()
    {
        Hand hand = On().To("Fiddle lessons").Press("Space");
        Assert.Equal("Write an amount above zero.", hand.Try("0"));
        hand.Type("999999").Press("Right");
        Assert.Contains("999,999.00", hand.Message, StringComparison.Ordinal);
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.TrimStart().StartsWith("! ", StringComparison.Ordinal));
        Assert.Empty(demo.Session.Book.Weeks.Payments);
    }

    // A terminal that goes leaves it as it stood, for this due and no other.
    [Fact]
    public void HalfTyped_IsThereAgain_AtThatDueAlone()
    {
        On().To("Fiddle lessons").Press("Space").Type("20", "12 Mar");
        Hand again = On();
        Assert.DoesNotContain(again.To("Phones").Press("Space").Shown(new Size(80, 24)), line => line.Contains("20.00", StringComparison.Ordinal));
        again.Press("Esc").To("Fiddle lessons").Press("Space");
        Assert.Contains(again.Shown(new Size(80, 24)), line => line.Contains("Amount  20.00", StringComparison.Ordinal));
        again.Press("Right");
        Assert.Equal(2000, Assert.Single(demo.Stored.Weeks.Payments).Amount.MinorUnits);
        Assert.Empty(demo.Stored.Weeks.Forms);
    }

    // The rest of what was paid in part, and all of one of which nothing was.
    [Fact]
    public void Free_IsCalledFreed()
    {
        Hand hand = On().To("Fiddle lessons").Press("Space").Type("20").Press("Right").To("rest to pay").Press("x", "Enter").To("Phones").Press("x", "Enter");
        string[] shown = hand.Shown(new Size(100, 40));
        Assert.Contains(shown, line => line.Contains("Fiddle lessons", StringComparison.Ordinal) && line.EndsWith("rest freed", StringComparison.Ordinal));
        Assert.Contains(shown, line => line.Contains("Phones", StringComparison.Ordinal) && line.EndsWith("  freed", StringComparison.Ordinal));
        Assert.DoesNotContain(shown, line => line.Contains("waived", StringComparison.Ordinal));
    }

    [Fact]
    public void Undo_AfterAQuestion_LeavesItToPay()
    {
        Hand hand = On().To("Sofa card").Press("Space", "Right").To("paid 13 Mar").Press("u", "Enter");

        Assert.Equal("The payment is taken back.", Assert.IsType<DuesScreen>(hand.Top).Message);
        Assert.Empty(demo.Session.Book.Weeks.StandingPayments);
    }

    // The cursor is on the next one by then.
    [Fact]
    public void Undo_OnADueThatWaits_AsksForTheLastTicked()
    {
        Assert.Equal("Nothing was ticked yet.", On().To("Sofa card").Press("u").Message);
        Hand hand = On().To("Sofa card").Press("Space", "Right", "u");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("Sofa card: ", StringComparison.Ordinal));
        hand.Press("Enter");
        Assert.Empty(demo.Session.Book.Weeks.StandingPayments);
    }

    private Hand On() => new Hand(new HomeScreen(demo.Session)).Press("q");
}
