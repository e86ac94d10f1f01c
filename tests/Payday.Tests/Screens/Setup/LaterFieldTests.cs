using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Pots;

namespace Payday.Tests.Screens.Setup;

/// <summary>An amount that changes from a date on, typed in a form or as a line.</summary>
public sealed class LaterFieldTests : IDisposable
{
    private readonly DemoBook demo = new();

    public void Dispose() => demo.Dispose();

    [Theory]
    [InlineData("1480 from 1 Jan 2027", "1480.00 2027-01-01")]
    [InlineData("1480 from Jan 2027", "1480.00 2027-01-01")]
    [InlineData("1400+80 FROM 2027-01-15; 0 from 1 Mar 2028;", "1480.00 2027-01-15; 0.00 2028-03-01")]
    [InlineData("1,480 from Jan 2027, 1,510.50 from 15 Feb 2028", "1480.00 2027-01-01; 1510.50 2028-02-15")]
    [InlineData("1480 from Jan 2027,1510 from 2028-02-15,1600 FROM Jan 2029", "1480.00 2027-01-01; 1510.00 2028-02-15; 1600.00 2029-01-01")]
    [InlineData("1480 from Jan 5, 2027", "1480.00 2027-01-05")]
    public void Type_Changes_AreStored(string typed, string expected)
    {
        demo.Hand.To("Bills").Press("Enter").To("Rent").Press("Enter").To("Changes to").Type(typed);

        Assert.Equal(expected, Said(demo.Stored.Household.Bills.Single(bill => bill.Name == "Rent").Later));
    }

    [Fact]
    public void Type_Nothing_TakesThemOut()
    {
        Hand hand = demo.Hand.To("Bills").Press("Enter").To("Rent").Press("Enter").To("Changes to").Type("1480 from Jan 2027");
        Assert.Contains(hand.Shown(new(80, 24)), line => line.Contains("Changes to", StringComparison.Ordinal) && line.EndsWith("1,480.00 from 1 Jan 2027", StringComparison.Ordinal));

        hand.To("Changes to").Type("");

        Assert.Equal(LaterAmounts.None, demo.Stored.Household.Bills.Single(bill => bill.Name == "Rent").Later);
    }

    [Theory]
    [InlineData("1480", "'1480' is no change of an amount; write it like 1480 from 1 Jan 2027, several with commas between them.")]
    [InlineData(";", "';' is no change of an amount; write it like 1480 from 1 Jan 2027, several with commas between them.")]
    [InlineData("1480 from", "'1480 from' is no change of an amount; write it like 1480 from 1 Jan 2027, several with commas between them.")]
    [InlineData("x from 1 Jan 2027", "'x' is not an amount; write it like 12.55.")]
    [InlineData("1480 from soon", "'soon': Not a date; write it like 2026-03-12 or 12 Mar 2026.")]
    [InlineData("-5 from 1 Jan 2027", "An amount below zero has no place here.")]
    [InlineData("1480 from 1 Jan 2020", "2020-01-01 is before the household starts, 2026-03-05; write a later date.")]
    [InlineData("1480 from Jan 2028; 1500 from Jan 2027", "2027-01-01 is not after 2028-01-01; write the changes in the order of their dates, each date once.")]
    public void Type_WhatCanNotBe_SaysWhyAndStoresNothing(string typed, string expected)
    {
        Hand hand = demo.Hand.To("Bills").Press("Enter").To("Rent").Press("Enter").To("Changes to");

        Assert.Equal(expected, hand.Try(typed));
        Assert.Equal(LaterAmounts.None, demo.Stored.Household.Bills.Single(bill => bill.Name == "Rent").Later);
    }

    [Fact]
    public void Forms_OfSourcesAndPots_HaveThemToo()
    {
        demo.Hand.To("Income sources").Press("Enter", "Enter").To("Changes to").Type("2400 from Apr 2026");
        demo.Hand.Press("Esc", "Esc").To("Pots").Press("Enter").To("Food").Press("Enter").To("Changes to").Type("220 from Apr 2026");

        Assert.Equal("2400.00 2026-04-01", Said(demo.Stored.Household.Sources[0].Later));
        Assert.Equal("220.00 2026-04-01", Said(Assert.IsType<PotKind.Spending>(demo.Stored.Household.Pots.Single(pot => pot.Name == "Food").Kind).Later));
    }

    [Fact]
    public void Line_ThatChanges_IsStoredAndShowsItInTheList()
    {
        Hand hand = demo.Hand.To("Bills").Press("Enter", "i").Press("Enter").Type("Choir 12.50 1st, 13 from Apr 2026", "").Press("Right", "Esc");

        Assert.Equal("13.00 2026-04-01", Said(demo.Stored.Household.Bills[^1].Later));
        string[] shown = hand.Shown(new(100, 40));
        Assert.True(shown.Any(line => line.Contains("Choir", StringComparison.Ordinal) && line.Contains("every month, 1, 13.00 from 1 Apr 2026", StringComparison.Ordinal) && line.Contains(" 12.50", StringComparison.Ordinal)), string.Join('\n', shown));
    }

    private static string Said(LaterAmounts later) => string.Join("; ", later.All.Select(change => $"{change.Amount.ToPlain()} {NodaTime.Text.LocalDatePattern.Iso.Format(change.From)}"));
}
