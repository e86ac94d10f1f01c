using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Core.ItemLines;
using Payday.Core.Tests.Drafts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Households;

/// <summary>A month of the twelve to come; the figures worked out by hand: 26 wages, 52 fill days.</summary>
public sealed class UsualMonthTests
{
    private static readonly LocalDate From = new(2026, 3, 5);
    private static readonly LineFacts Facts = new(Dollars, NumberStyle.CommaPoint, DateOrder.MonthFirst, From);

    [Fact]
    public void Of_AHousehold_IsATwelfthOfItsYear()
    {
        UsualMonth month = Of(SmallDraft.Whole);

        // 26 x 1,712.35; rent; 2 % of 450 is 9, at least 20; 52 x 85, and 1,050 over 13 whole months.
        Assert.Equal(("3710.09", "840.00", "20.00", "449.10"), (month.ComesIn.ToPlain(), month.Bills.ToPlain(), month.Minimums.ToPlain(), month.Pots.ToPlain()));
        Assert.Equal("2400.99", month.Left.ToPlain());
    }

    [Theory]
    [InlineData("Food 90 a payday in cash", "195.00")]
    [InlineData("Food 90 a month in cash", "90.00")]
    [InlineData("Food 90 a month spread in cash", "90.00")]
    [InlineData("Food 90 a month in cash, 102 from 1 Jan 2027", "92.00")]
    [InlineData("Steps 1..20 in the account", "17.50")]
    [InlineData("Steps 1..52 in the account", "29.25")]
    [InlineData("Steps 52..1 in the account", "85.58")]
    [InlineData("Steps 1..20 in the account has 55", "12.92")]
    [InlineData("Piano 10 x 50 in the account", "21.67")]
    [InlineData("Reserve 2000 with 50 in the account", "108.33")]
    [InlineData("Reserve 600 with 50 in the account", "50.00")]
    [InlineData("Holiday 1200 by 5 Jul 2026 in the account", "300.00")]
    [InlineData("Holiday 1200 by 4 Jul 2026 in the account", "400.00")]
    [InlineData("Holiday 1200 by 10 Mar 2026 in the account", "1200.00")]
    [InlineData("Holiday 1200 by 5 Jul 2026 in the account has 200", "250.00")]
    public void Of_APot_IsWhatItAsksFor(string line, string expected) =>
        Assert.Equal(expected, Of(SmallDraft.Whole with { Pots = [ItemLine.Pot(line, Facts).Value!] }).Pots.ToPlain());

    [Theory]
    [InlineData("Tax 120 yearly from 1 Apr", "10.00")]
    [InlineData("Water 165 q 15 May", "55.00")]
    [InlineData("Car 684 6m 9 Nov", "114.00")]
    [InlineData("School 92 15 Apr 2026", "7.67")]
    [InlineData("Choir 12 1st until 30 Jun 2026", "3.00")]
    [InlineData("Rent 1200 1st, 1320 from Jan 2027", "1230.00")]
    public void Of_ABill_IsATwelfthOfItsDues(string line, string expected) =>
        Assert.Equal(expected, Of(SmallDraft.Whole with { Bills = [ItemLine.Bill(line, Facts).Value! with { Shift = Shift.None, Essential = true }] }).Bills.ToPlain());

    // Whatever the day from which it is looked at, what comes once a month is once in a month.
    [Fact]
    public void Of_AMonthlyBill_IsItsAmountFromAnyDay() => Gen.Select(Gen.Int[1, 99_999_999], Gen.Int[1, 31], Gen.Int[0, 2_000]).Sample((minor, day, later) =>
    {
        HouseholdDraft draft = SmallDraft.WithBill(bill => bill with { Amount = minor / 100m, Schedule = new() { Kind = ScheduleKind.Monthly, Day = new MonthDay.Numbered(day) }, SetAside = null });
        Assert.Equal(minor, UsualMonth.Of(HouseholdCheck.Of(draft).Value!, From.PlusDays(later)).Bills.MinorUnits);
    });

    private static UsualMonth Of(HouseholdDraft draft) => UsualMonth.Of(HouseholdCheck.Of(draft).Value!, From);
}
