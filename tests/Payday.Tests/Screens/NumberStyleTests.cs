using System.Drawing;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Screens.Home;
using Payday.Screens.Routines;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Screens.Weeks;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens;

/// <summary>A household that writes 1.234,56 sees no other way to write an amount.</summary>
public sealed class NumberStyleTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 13));

    public NumberStyleTests()
    {
        demo.CloseOne();
        CashPieces cash = demo.Household.Settings.Cash;
        Assert.Null(demo.Session.Change(demo.Household with
        {
            Settings = demo.Household.Settings with
            {
                Numbers = NumberStyle.PointComma,
                Cash = cash with { Coins = [Money.ParsePlain("0.25", demo.Household.Currency).Value] },
            },
        }));
    }

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Debts_Rate_HasAComma() => Shows(new Hand(RoutineScreen.Open(demo.Session).Value!).Press("Right", "Right"), "23,49 %");

    [Fact]
    public void Count_ByNotes_HasCommas() => Shows(new Hand(new CountScreen(demo.Session)).Press("n"), " 0,25 ");

    [Fact]
    public void Count_Missing_SaysHowInItsOwnStyle() =>
        Assert.Equal("Write it like Lost coin=0,50.", new Hand(new CountScreen(demo.Session)).Type("21").To("Food").Press("e").Try("coin"));

    [Fact]
    public void Purchase_Sum_HasAComma() => Shows(new Hand(new PurchasesScreen(demo.Session)).Press("a").To("Amount"), "12,50+3");

    [Fact]
    public void PurchaseList_Example_CanBeRead()
    {
        Hand hand = new Hand(new PurchasesScreen(demo.Session)).Press("i");
        Shows(hand, "2026-03-07; 12,50;");
    }

    [Fact]
    public void Help_Sum_HasAComma() =>
        Assert.DoesNotContain(new Hand(new HomeScreen(demo.Session)).Press("w").Top.Bindings, key => key.Help.Contains("12.50", StringComparison.Ordinal));

    [Theory]
    [InlineData("The pots already have 1350.00, but the account has 0.50; raise it.", "The pots already have 1.350,00, but the account has 0,50; raise it.")]
    [InlineData("There is no pot \"v1.5\"; write '2.5' otherwise.", "There is no pot \"v1.5\"; write '2.5' otherwise.")]
    [InlineData("It begins on 2026-03-05.", "It begins on 2026-03-05.")]
    public void PlainFault_Amounts_AreWrittenAsTheHouseholdDoes(string sentence, string shown) =>
        Assert.Equal(shown, PlainFault.Sentence(sentence, NumberStyle.PointComma));

    private static void Shows(Hand hand, string text) => Assert.Contains(text, string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
}
