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

    private Hand Lines(string list) => demo.Hand.To(list).Press("Enter", "i");

    private static void Shows(Hand hand, string text) =>
        Assert.True(string.Join(' ', hand.Shown(new(80, 24)).Select(line => line.Trim())).Contains(text, StringComparison.Ordinal), string.Join('\n', hand.Shown(new(80, 24))));

    [Fact]
    public void Lines_OneAfterTheOther_AreStoredByOneKey()
    {
        int bills = demo.Stored.Household.Bills.Length;
        Hand hand = Lines("Bills").Press("Enter").Type("Choir 12.50 every 2 weeks from 13 Mar", "Allotment 38 yearly 1 Apr", "");
        Shows(hand, "2 bills read; Right takes them.");
        Assert.Equal(bills, demo.Stored.Household.Bills.Length);

        hand.Press("Right");

        Assert.Equal(["Choir", "Allotment"], demo.Stored.Household.Bills.TakeLast(2).Select(bill => bill.Name));
        Bill choir = demo.Stored.Household.Bills[^2];
        Assert.Equal(new Schedule.EveryWeeks(2, new(2026, 3, 13)), choir.Schedule);
        Assert.Equal("12.50", choir.Amount.ToPlain());
    }

    // Each by the line that says it, in one sentence that names the place.
    [Theory]
    [InlineData("Choir 9 whenever", "'whenever' in 'Choir 9 whenever' can't be read; leave it out, or fill it in by the form.")]
    [InlineData("Choir", "'Choir' has no amount behind a name; write it like Rent 1450 1st.")]
    [InlineData("Choir 9 every 2nd Friday", "'every 2nd Friday' in 'Choir 9 every 2nd Friday' can be read two ways: write every other Friday from a date, or 2nd Friday of each month.")]
    [InlineData("Choir 9", "'Choir 9' doesn't say this yet: Day. Enter adds it to the line, like Rent 1450 1st.")]
    [InlineData("Choir 9 2w", "'Choir 9 2w' doesn't say this yet: One such date. Enter adds it to the line, like Rent 1450 1st.")]
    [InlineData("Rent 20 1st", "\"Rent\" is already the name of another one; give each its own.")]
    public void Line_ThatCanNotBeTaken_SaysWhyAndStaysToBeMended(string line, string why)
    {
        int bills = demo.Stored.Household.Bills.Length;
        Hand hand = Lines("Bills").Press("Enter").Type(line, "");
        Shows(hand, why);
        Shows(hand, "1 line to mend.");

        hand.Press("Right");
        Assert.Equal(bills, demo.Stored.Household.Bills.Length);
        hand.Press("Enter").Type("Choir 9 1st").Press("Right");
        Assert.Equal("Choir", demo.Stored.Household.Bills[^1].Name);
    }

    [Fact]
    public void Lines_OfWhichSomeAreWrong_AreTakenButForThese()
    {
        Hand hand = Lines("Bills").Press("Enter").Type("Choir 9 1st", "Bells", "Choir 12 3rd", "Kites 2 1st", "").Press("Right");

        Assert.Equal(["Choir", "Kites"], demo.Stored.Household.Bills.TakeLast(2).Select(bill => bill.Name));
        Assert.Equal("2 bills taken. 2 lines to mend; Esc leaves them here.", hand.Message);
        Shows(hand.Press("Esc"), "2 lines not taken yet: i shows them.");
        Shows(hand.Press("i"), "Choir 12 3rd");
    }

    [Fact]
    public void Lines_TakenLast_AreTakenBackAsLines()
    {
        int bills = demo.Stored.Household.Bills.Length;
        Hand hand = Lines("Bills").Press("Enter").Type("Choir 9 1st", "Bells 2 1st", "").Press("Ctrl+U");
        Assert.Equal("Taken back: Bells 2 1st", hand.Message);
        hand.Press("Right", "Ctrl+U");
        Assert.Equal(bills, demo.Stored.Household.Bills.Length);
        Shows(hand, "Choir");

        hand.Press("Right", "Esc", "u");
        Assert.Equal(bills, demo.Stored.Household.Bills.Length);
        Shows(hand, "1 bill read; Right takes it.");
        Assert.DoesNotContain(hand.Press("Esc").Top.Bindings, key => key.Name == "u");
    }

    [Fact]
    public void Lines_Forgotten_AreGoneAfterAQuestion()
    {
        Hand hand = Lines("Bills").Press("Enter").Type("Choir 9 1st", "Bells 2 1st", "Kites", "").Press("Ctrl+X", "Del");
        Shows(hand, "Forget 2 lines?");
        Shows(hand.Press("Esc"), "Bells");
        Shows(hand.Press("Del", "Enter"), "Type each bill as a line");
    }

    [Fact]
    public void Lines_OfDebtsAndPots_AreTheirKinds()
    {
        Lines("Pots").Press("Enter").Type("Boots 120 by 2 Oct", "Tea money 6", "").Press("Right", "Esc");
        demo.Hand.Press("Esc");
        Lines("Debts").Press("Enter").Type("Bike 300 4.9% 25 5", "").Press("Right");

        Assert.Equal(new PotKind.Sinking(Core.Amounts.Money.FromMinorUnits(12000, demo.Stored.Household.Currency), new(2026, 10, 2)), demo.Stored.Household.Pots[^2].Kind);
        Assert.Equal(FillPer.Week, Assert.IsType<PotKind.Spending>(demo.Stored.Household.Pots[^1].Kind).Per);
        Assert.Equal(demo.Stored.Household.Pots[^2].Rank + 1, demo.Stored.Household.Pots[^1].Rank);
        Debt bike = demo.Stored.Household.Debts[^1];
        Assert.Equal((0.049m, "25.00"), (bike.YearlyRate, Assert.IsType<MinimumRule.Fixed>(bike.Minimum).Amount.ToPlain()));
    }

    [Fact]
    public void Lines_PastedOnTheList_AreShownBeforeTheyAreTaken()
    {
        demo.Hand.To("Bills").Press("Enter");
        int bills = demo.Stored.Household.Bills.Length;

        Hand hand = demo.Hand.Paste("- Choir 12.50 1st\r\nAllotment 38 yearly 1 Apr\n\nPots:\nTea money 6\n");
        Assert.Equal("Pasted: 2 lines in Bills and 1 line in Pots. Nothing is taken yet.", hand.Message);
        Assert.Equal(bills, demo.Stored.Household.Bills.Length);
        hand.Press("Right");
        Assert.Equal(["Choir", "Allotment"], demo.Stored.Household.Bills.TakeLast(2).Select(bill => bill.Name));
        Shows(hand.Press("Esc", "Esc").To("Pots"), "1 line to take");
    }

    [Fact]
    public void Lines_MoreThanAListHolds_AreRefusedWhole()
    {
        Hand hand = demo.Hand.To("Bills").Press("Enter").Paste(string.Join('\n', Enumerable.Range(1, 501).Select(i => $"Bill {i}")));

        Assert.Equal("There is room for 500 lines: take these first, or forget them with Del. Nothing of what was pasted was kept.", hand.Message);
        Assert.True(demo.Session.BegunItems.BillLines is null);
    }

    [Fact]
    public void Lines_OfAHousehold_ShowItsMonth()
    {
        Hand hand = Lines("Bills");
        string before = hand.Shown(new(120, 24))[1];
        Assert.StartsWith(" A month of the next 12: in ", before, StringComparison.Ordinal);
        hand.Press("Enter").Type("Castle 99000 1st", "");
        Assert.Contains("missing", hand.Shown(new(120, 24))[1], StringComparison.Ordinal);
        Assert.Equal(before, hand.Press("Esc").Shown(new(120, 24))[1]);
    }
}
