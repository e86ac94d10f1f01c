using System.Drawing;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.DuePayments;
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
        hand.To("Sofa card").Press("Space").Leave();
        hand.To("Fiddle lessons").Press("Space").Type("20 on 12 Mar");
        Golden.Equal($"dues-{width}x{height}", hand.Shown(new Size(width, height)));
    }

    [Fact]
    public void Space_ThenEnter_TicksAllOfItToday()
    {
        Hand hand = On().To("Sofa card");
        DueLine due = DueLines.Of(demo.Session.Book, new(2026, 3, 20)).First(line => line.Name == "Sofa card");

        hand.Press("Space").Leave();

        DuePayment paid = Assert.Single(demo.Session.Book.Weeks.Payments);
        Assert.Equal((due.Key, due.Rest, new LocalDate(2026, 3, 13), true), (paid.Key, paid.Amount, paid.Date, paid.Completes));
        Assert.Equal("Ticked.", hand.Message);
    }

    [Fact]
    public void Space_AnotherAmountAndDay_PaysAPart()
    {
        Hand hand = On().To("Fiddle lessons").Press("Space").Type("20 on 12 Mar");

        DuePayment paid = Assert.Single(demo.Session.Book.Weeks.Payments);
        Assert.Equal((new LocalDate(2026, 3, 12), false), (paid.Date, paid.Completes));
        Assert.Equal("20.00 paid; 25.00 is still to pay. x frees it.", hand.Message);
        hand.To("rest to pay").Press("x", "Enter");
        Assert.True(demo.Session.Book.Weeks.Payments[^1].Completes);
    }

    [Theory]
    [InlineData("20 on 2026-03-14", "That day is still to come.")]
    [InlineData("0", "What was paid is above zero; to waive what is due, free it.")]
    public void Space_WhatCantBe_IsSaidAndNothingIsWritten(string typed, string said)
    {
        Assert.Equal(said, On().To("Fiddle lessons").Press("Space").Try(typed));
        Assert.Empty(demo.Session.Book.Weeks.Payments);
    }

    [Fact]
    public void Undo_AfterAQuestion_LeavesItToPay()
    {
        Hand hand = On().To("Sofa card").Press("Space").Leave().To("paid 13 Mar").Press("u", "Enter");

        Assert.IsType<HomeScreen>(hand.Top);
        Assert.Empty(demo.Session.Book.Weeks.StandingPayments);
    }

    private Hand On() => new Hand(new HomeScreen(demo.Session)).Press("q");
}
