using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Pots;
using static Payday.Tests.Screens.Setup.DemoBook;

namespace Payday.Tests.Screens.Setup;

/// <summary>Items typed or pasted as lines.</summary>
public sealed class ItemLineTests : IDisposable
{
    private readonly DemoBook demo = new();

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Lines_OneAfterTheOther_AreStoredUntilNothingIsTyped()
    {
        demo.Hand.To("Bills").Press("Enter", "i").Type("Choir 12.50 every 2 weeks from 13 Mar", "Allotment 38 yearly 1 Apr", "");

        Assert.Equal(["Choir", "Allotment"], demo.Stored.Household.Bills.TakeLast(2).Select(bill => bill.Name));
        Bill choir = demo.Stored.Household.Bills[^2];
        Assert.Equal(new Schedule.EveryWeeks(2, new(2026, 3, 13)), choir.Schedule);
        Assert.Equal("12.50", choir.Amount.ToPlain());
    }

    [Fact]
    public void Line_ThatCanNotBeRead_SaysWhyAndStoresNothing()
    {
        int bills = demo.Stored.Household.Bills.Length;

        Assert.Equal(
            "'whenever' in 'Choir 9 whenever' can't be read; leave it out, or fill it in by the form.",
            demo.Hand.To("Bills").Press("Enter", "i").Try("Choir 9 whenever"));
        Assert.Equal(bills, demo.Stored.Household.Bills.Length);
    }

    [Fact]
    public void Line_OfANameThatIsTaken_SaysSo() =>
        Assert.Contains("Rent", demo.Hand.To("Bills").Press("Enter", "i").Try("Rent 1450 1st"), StringComparison.Ordinal);

    // What the line leaves open the form asks for.
    [Fact]
    public void Line_ThatIsNotWhole_IsKeptAsBegun()
    {
        Hand hand = demo.Hand.To("Bills").Press("Enter", "i").Type("Allotment 38");

        Assert.Contains(hand.Shown(new(80, 24)), line => line.Contains("Begun and not complete yet: Allotment", StringComparison.Ordinal));
        Assert.Equal("Another bill was begun and isn't complete yet; a goes on with it.", hand.Press("i").Try("Choir 9 1st"));
    }

    [Fact]
    public void Lines_OfDebtsAndPots_AreTheirKinds()
    {
        demo.Hand.To("Pots").Press("Enter", "i").Type("Boots 120 by 2 Oct", "Tea money 6 a week", "");
        demo.Hand.Press("Esc").To("Debts").Press("Enter", "i").Type("Bike 300 at 4.9% min 25 5th", "");

        Assert.Equal(new PotKind.Sinking(Core.Amounts.Money.FromMinorUnits(12000, demo.Stored.Household.Currency), new(2026, 10, 2)), demo.Stored.Household.Pots[^2].Kind);
        Assert.Equal(FillPer.Week, Assert.IsType<PotKind.Spending>(demo.Stored.Household.Pots[^1].Kind).Per);
        Debt bike = demo.Stored.Household.Debts[^1];
        Assert.Equal((0.049m, "25.00"), (bike.YearlyRate, Assert.IsType<MinimumRule.Fixed>(bike.Minimum).Amount.ToPlain()));
    }

    [Fact]
    public void Lines_PastedOnTheList_AreAllTaken()
    {
        Hand hand = demo.Hand.To("Bills").Press("Enter");

        Assert.True(hand.Top.Pasted("Choir 12.50 1st\nAllotment 38 yearly 1 Apr\n\n"));
        Assert.Equal("2 bills taken: look at each, Enter opens it.", hand.Message);
        Assert.True(hand.Top.Pasted("Bells 1 1st\nnothing\nKites 2 1st"));
        Assert.Equal("1 bill taken; then: 'nothing' has no amount behind a name; write it like Rent 1450 1st.", hand.Message);
        Assert.Equal(["Choir", "Allotment", "Bells"], demo.Stored.Household.Bills.TakeLast(3).Select(bill => bill.Name));
    }
}
