using System.Drawing;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Drafts;
using Payday.Screens.Cards;
using Payday.Screens.Counts;
using Payday.Screens.Home;
using Payday.Screens.Routines;
using Payday.Tests.Screens.Setup;
using Payday.Texts;

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
        Assert.Equal("Write it like 0,50, or with a name, like Lost coin=0,50.", new Hand(new CountScreen(demo.Session)).Type("21").To("Food").Press("e").Try("coin"));

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

    [Fact]
    public void FormFault_Amounts_AreWrittenAsTheHouseholdDoes()
    {
        Money amount(string text) => Money.ParsePlain(text, Currency.FromCode("EUR")).Value;

        Assert.Equal(
            "The set-asides of bills and the pots in the account already have 1.350,00, but the account has 0,50; raise what is in the account, or lower what a bill or pot has of it.",
            FormTexts.Of(new DraftFault.AccountTooLow(DraftPlace.Whole, amount("1350"), amount("0.5")), NumberStyle.PointComma));
        Assert.Equal(
            "There is no note of 0,50 in use; write one of 20.",
            FormTexts.Of(new DraftFault.NoteNotInUse(DraftPlace.Whole, amount("0.5"), [amount("20")]), NumberStyle.PointComma));
        Assert.Equal(
            "\"v1.5\" is already the name of another one; give each its own.",
            FormTexts.Of(new DraftFault.NameTaken(DraftPlace.Whole, "v1.5", DraftPlace.Whole), NumberStyle.PointComma));
        Assert.Equal(
            "2026-03-04 is before the household starts, 2026-03-05; write a later date.",
            FormTexts.Of(new DraftFault.DateBeforeStart(DraftPlace.Whole, new(2026, 3, 4), new(2026, 3, 5)), NumberStyle.PointComma));
    }

    private static void Shows(Hand hand, string text) => Assert.Contains(text, string.Join('\n', hand.Shown(Complete)), StringComparison.Ordinal);
}
