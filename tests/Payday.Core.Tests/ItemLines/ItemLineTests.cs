using System.Globalization;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.ItemLines;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.ItemLines;

/// <summary>Lines as people note them, and what they are read as.</summary>
public sealed class ItemLineTests
{
    private static readonly string[] Vocabulary = ["Rent", "1450", "1st", "every", "2", "weeks", "\"", "1..20", "6m", "q", "9/11", "2nd", "Friday", "until", "again", "min 2%", "4%", "from", "9", "Nov", "by", "%", "min", "or", "a", "week", "last", "-", "1.5", "99999999999999999999", "has", "in", "x"];

    private static readonly LineFacts Facts = new(Dollars, NumberStyle.CommaPoint, DateOrder.MonthFirst, new(2026, 3, 5));

    [Theory]
    [InlineData("Rent 1450 1st", "Rent | 1450 | monthly 1")]
    [InlineData("Rent 1,450.00 on the 1st of each month", "Rent | 1450 | monthly 1")]
    [InlineData("Rent $1450 last working day", "Rent | 1450 | monthly last working")]
    [InlineData("Water and sewer 164.75 every 3 months from 15 May", "Water and sewer | 164.75 | every 3 months 2026-05-15")]
    [InlineData("Car insurance 684 every 6 months from 9 Nov", "Car insurance | 684 | every 6 months 2026-11-09")]
    [InlineData("Renters' insurance 132 yearly 2 Feb", "Renters' insurance | 132 | yearly 2027-02-02")]
    [InlineData("Route 66 club 25 monthly 15", "Route 66 club | 25 | monthly 15")]
    [InlineData("After-school club 58 every Monday", "After-school club | 58 | weekly 2026-03-09")]
    [InlineData("School fees 92.50 15 April 2026", "School fees | 92.5 | dates 2026-04-15")]
    [InlineData("Clinic 40 2nd Friday", "Clinic | 40 | monthly 2 Friday")]
    [InlineData("Clinic 40 last Friday", "Clinic | 40 | monthly 5 Friday")]
    [InlineData("Lessons 45 1st and 15th", "Lessons | 45 | twice 1, 15")]
    [InlineData("Lessons, 45, 1st and last", "Lessons | 45 | twice 1, last")]
    [InlineData("Milk 6.20 every two weeks from 12 March", "Milk | 6.2 | fortnightly 2026-03-12")]
    [InlineData("Internet 62.99", "Internet | 62.99 | -")]

    // As short as a person would note it.
    [InlineData("Rent 1450 1", "Rent | 1450 | monthly 1")]
    [InlineData("Rent 1450 end", "Rent | 1450 | monthly last")]
    [InlineData("Water 165 q 15 Jan", "Water | 165 | every 3 months 2027-01-15")]
    [InlineData("Car cover 684 6m 9 Nov", "Car cover | 684 | every 6 months 2026-11-09")]
    [InlineData("Car cover 684 6 months 9 Nov", "Car cover | 684 | every 6 months 2026-11-09")]
    [InlineData("Car cover 684 half-yearly from 9 Nov", "Car cover | 684 | every 6 months 2026-11-09")]
    [InlineData("Renters 132 y 2/2", "Renters | 132 | yearly 2027-02-02")]
    [InlineData("Milk 6.20 2w 12 Mar", "Milk | 6.2 | fortnightly 2026-03-12")]
    [InlineData("Milk 6.20 every other Thursday from 12 Mar", "Milk | 6.2 | fortnightly 2026-03-12")]
    [InlineData("Milk 6.20 every 2nd Thursday from 12 Mar", "Milk | 6.2 | fortnightly 2026-03-12")]
    [InlineData("Clinic 40 every 2nd Friday of each month", "Clinic | 40 | monthly 2 Friday")]
    [InlineData("Cleaner 60 every Friday from 20 Mar", "Cleaner | 60 | weekly 2026-03-20")]
    [InlineData("\"Club 12\" 20 5th", "Club 12 | 20 | monthly 5")]
    [InlineData("Bin tax 80 9/11", "Bin tax | 80 | dates 2026-09-11")]
    [InlineData("Bin tax 80 13/4", "Bin tax | 80 | dates 2026-04-13")]
    public void Bill_AsItIsNoted_IsRead(string line, string expected) => Assert.Equal(expected, Said(ItemLine.Bill(line, Facts).Value!));

    [Theory]
    [InlineData("Rent 1450 1st, 1480 from Jan 2027", "Rent | 1450 | monthly 1", "1480 2027-01-01")]
    [InlineData("Rent 1450 1st, 1,480.00 from 1 Jan 2027; 1510 from 2028-02-01", "Rent | 1450 | monthly 1", "1480 2027-01-01, 1510 2028-02-01")]
    [InlineData("Rent 1450 1st 1480 from 15 Jan 2027 1500 from March 2027", "Rent | 1450 | monthly 1", "1480 2027-01-15, 1500 2027-03-01")]
    [InlineData("Milk 6.20 every two weeks from 12 March, 7 from 1 May", "Milk | 6.2 | fortnightly 2026-03-12", "7 2026-05-01")]
    [InlineData("Tax 90 yearly from 2 Feb, 1900 from 3 Feb 2028", "Tax | 90 | yearly 2027-02-02", "1900 2028-02-03")]
    [InlineData("Internet 62.99, 65 from Jun 2026", "Internet | 62.99 | -", "65 2026-06-01")]
    [InlineData("\"Net 5\" 62.99, 5.16 from 30 Jan 2021, 39.71 from 28 Dec 2023", "Net 5 | 62.99 | -", "5.16 2021-01-30, 39.71 2023-12-28")]
    public void Bill_ThatChanges_IsRead(string line, string expected, string changes)
    {
        BillDraft bill = ItemLine.Bill(line, Facts).Value!;

        Assert.Equal(expected, Said(bill));
        Assert.Equal(changes, Changes(bill.Later));
    }

    [Theory]
    [InlineData("Food 205 a week, 220 from Jan 2027", "220 2027-01-01")]
    [InlineData("Food 205 a week in cash has 30, 220 from 9 Jan 2027", "220 2027-01-09")]
    [InlineData("Holiday 1200 by 1 Jul 2026 every year, 1300 from Jul 2027", "1300 2027-07-01")]
    [InlineData("Reserve 2000 with 50 a payday, 2500 from Jan 2027", "2500 2027-01-01")]
    public void Pot_ThatChanges_IsRead(string line, string changes) => Assert.Equal(changes, Changes(ItemLine.Pot(line, Facts).Value!.Later));

    [Fact]
    public void Source_ThatChanges_IsRead() =>
        Assert.Equal("1900 2027-01-01", Changes(ItemLine.Source("Wage 1840 every 2 weeks from 6 Mar, 1900 from Jan 2027", Facts).Value!.Later));

    // A ladder keeps its unit, a debt its balance; and a change needs its date.
    [Theory]
    [InlineData("Coins 5 in 52 steps, 6 from Jan 2027")]
    [InlineData("Coins 5 in 52 steps 6 from Jan 2027")]
    public void Pot_InSteps_TakesNoChange(string line) => Assert.IsType<LineFault.RestUnread>(ItemLine.Pot(line, Facts).Fault);

    [Theory]
    [InlineData("Rent 1450 1st, 1480 from")]
    [InlineData("Rent 1450 1st, 1480 from soon")]
    [InlineData("Rent 1450 1st, 1480 from Jan")]
    public void Bill_ChangeWithoutADate_IsRefused(string line) => Assert.IsType<LineFault.RestUnread>(ItemLine.Bill(line, Facts).Fault);

    private static string Changes(System.Collections.Immutable.ImmutableArray<LaterDraft>? later) =>
        string.Join(", ", (later ?? []).Select(change => $"{Plain(change.Amount)} {NodaTime.Text.LocalDatePattern.Iso.Format(change.From!.Value)}"));

    [Theory]
    [InlineData("Odette, joinery 2287.64 every 2 weeks from 6 Mar", "Odette, joinery | 2287.64 | fortnightly 2026-03-06")]
    [InlineData("Tobin 1418.27 monthly on the 25th", "Tobin | 1418.27 | monthly 25")]
    [InlineData("Odette 2287.64 every other Friday from 6 Mar", "Odette | 2287.64 | fortnightly 2026-03-06")]
    [InlineData("Odette 2287.64 2w 6 Mar", "Odette | 2287.64 | fortnightly 2026-03-06")]
    public void Source_AsItIsNoted_IsRead(string line, string expected)
    {
        SourceDraft source = ItemLine.Source(line, Facts).Value!;
        Assert.Equal(expected, $"{source.Name} | {Plain(source.Expected)} | {Said(source.Schedule)}");
    }

    [Theory]
    [InlineData("Sofa card 1846.19 at 23.49% min 2% or 25 on the 12th", "Sofa card | 1846.19 | 0.2349 | 0.02 or 25 | 12")]
    [InlineData("Car loan 6302.88 at 6.49 % min 214.60 18th", "Car loan | 6302.88 | 0.0649 | 214.6 | 18")]
    [InlineData("Dental plan 540", "Dental plan | 540 | - | - | -")]
    [InlineData("Car loan 8400 at 6.9% min 210 on the 15th", "Car loan | 8400 | 0.069 | 210 | 15")]
    [InlineData("Car loan 8400 6.9% 210 15", "Car loan | 8400 | 0.069 | 210 | 15")]
    [InlineData("Sofa card 1846 23.5% 2% 12", "Sofa card | 1846 | 0.235 | 0.02 or 0 | 12")]
    [InlineData("Sofa card 1846 23.5% 2% 25 12", "Sofa card | 1846 | 0.235 | 0.02 or 25 | 12")]
    [InlineData("Sofa card 1846 23.5% 2% or 12", "Sofa card | 1846 | 0.235 | 0.02 or 12 | -")]
    [InlineData("Sofa card 1846 23.5% 12th", "Sofa card | 1846 | 0.235 | - | 12")]
    [InlineData("Sofa card 1846 23.5% 40", "Sofa card | 1846 | 0.235 | 40 | -")]
    public void Debt_AsItIsNoted_IsRead(string line, string expected)
    {
        DebtDraft debt = ItemLine.Debt(line, Facts).Value!;
        string minimum = debt.Minimum is { } least ? least.Kind == MinimumKind.Fixed ? Plain(least.Fixed) : $"{Plain(least.Percent)} or {Plain(least.Floor)}" : "-";
        Assert.Equal(expected, $"{debt.Name} | {Plain(debt.Balance)} | {Plain(debt.Rate)} | {minimum} | {(debt.Due is MonthDay.Numbered due ? due.Day : "-")}");
    }

    [Theory]
    [InlineData("Food 205 a week", "Food | Spending 205 Week")]
    [InlineData("Household goods 105 a month in cash", "Household goods | Spending 105 Month Cash")]
    [InlineData("Eating out 70 per payday", "Eating out | Spending 70 Payday")]
    [InlineData("Winter coats 260 by 2 Oct has 40", "Winter coats | Sinking 260 2026-10-02 has 40")]
    [InlineData("Week at the lake 1,450 by 1 Aug every year in the account", "Week at the lake | Sinking 1450 2026-08-01 every 12 Account")]
    [InlineData("Step ladder 5 in 26 steps", "Step ladder | Ladder 5 26 Rising")]
    [InlineData("Piano fund 10 x 50 even", "Piano fund | Ladder 10 50 Even")]
    [InlineData("Reserve 2000 with 25 a payday", "Reserve | Reserve 2000 25")]
    [InlineData("Reserve 2000 with 25", "Reserve | Reserve 2000 25")]
    [InlineData("Food 100", "Food | Spending 100 Week")]
    [InlineData("Food 100 a week in cash", "Food | Spending 100 Week Cash")]
    [InlineData("Clothes 60 m", "Clothes | Spending 60 Month")]
    [InlineData("Clothes 60 cash", "Clothes | Spending 60 Week Cash")]
    [InlineData("Holiday 1200 by 1 Jul", "Holiday | Sinking 1200 2026-07-01")]
    [InlineData("Holiday 1200 Jul", "Holiday | Sinking 1200 2026-07-01")]
    [InlineData("Holiday 1200 by Feb 2028", "Holiday | Sinking 1200 2028-02-01")]
    [InlineData("Tyres 400 by 1 Oct every 2 months", "Tyres | Sinking 400 2026-10-01 every 2")]
    [InlineData("Savings 1..20 ladder", "Savings | Ladder 1 20 Rising")]
    [InlineData("Savings 5..100", "Savings | Ladder 5 20 Rising")]
    [InlineData("Savings 20..1", "Savings | Ladder 1 20 Falling")]
    [InlineData("Piano fund 10 x 50", "Piano fund | Ladder 10 50 Even")]
    public void Pot_AsItIsNoted_IsRead(string line, string expected)
    {
        PotDraft pot = ItemLine.Pot(line, Facts).Value!;
        string kind = pot.Kind switch
        {
            PotUse.Spending => $"{Plain(pot.Amount)} {pot.Per}",
            PotUse.Sinking => $"{Plain(pot.Target)} {pot.By:uuuu-MM-dd}{(pot.Repeats is { } repeats ? $" every {(repeats.Kind == ScheduleKind.Yearly ? 12 : repeats.Months)}" : "")}",
            PotUse.Ladder => $"{Plain(pot.Unit)} {pot.Steps} {pot.Order}",
            _ => $"{Plain(pot.Level)} {Plain(pot.PerPayday)}",
        };
        Assert.Equal(expected, $"{pot.Name} | {pot.Kind} {kind}{(pot.Place is { } place ? " " + place : "")}{(pot.Has is { } has ? $" has {Plain(has)}" : "")}");
    }

    [Theory]
    [InlineData("Rent", "NoAmount { Line = Rent }")]
    [InlineData("1450", "NoAmount { Line = 1450 }")]
    [InlineData("Rent 1450 whenever", "RestUnread { Line = Rent 1450 whenever, Rest = whenever }")]
    [InlineData("Rent -20 1st", "RestUnread")]
    public void Bill_ThatIsNone_IsRefused(string line, string fault) =>
        Assert.StartsWith(fault == "RestUnread" ? "NoAmount" : fault, ItemLine.Bill(line, Facts).Fault!.ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("Milk 6 every 2nd Friday", "every 2nd Friday", "every other Friday from a date", "2nd Friday of each month")]
    [InlineData("Milk 6 every other Friday from 5 Mar", "Friday from 5 Mar", "Friday from 6 Mar", "Thursday from 5 Mar")]
    public void Bill_ThatCanBeTwoThings_IsAskedAbout(string line, string part, string one, string other) =>
        Assert.Equal(new LineFault.TwoWays(line, part, one, other), ItemLine.Bill(line, Facts).Fault);

    // As a bill its balance would be in no figure.
    [Fact]
    public void Bill_WithARate_IsADebts()
    {
        const string Loan = "Car loan 8400 at 6.9% min 210 on the 15th";
        Assert.Equal(new LineFault.ReadsAsDebt(Loan), ItemLine.Bill(Loan, Facts).Fault);
        Assert.Equal("Fund, 5% of it", ItemLine.Bill("\"Fund, 5% of it\" 20 1st", Facts).Value!.Name);
    }

    // A lone figure behind the rate may be the minimum or its day.
    [Fact]
    public void Debt_WithALoneFigureThatCanBeADay_IsAskedAbout() =>
        Assert.Equal(new LineFault.TwoWays("Bike 300 4.9% 25", "25", "min 25", "on the 25th"), ItemLine.Debt("Bike 300 4.9% 25", Facts).Fault);

    // Neither order of day and month is usual there.
    [Fact]
    public void Bill_WithADateInFiguresWhereNothingSettlesIt_IsAskedAbout() => Assert.Equal(
        new LineFault.TwoWays("Bin tax 80 9/11", "9/11", "9 Nov", "11 Sep"), ItemLine.Bill("Bin tax 80 9/11", Facts with { Order = DateOrder.Unknown }).Fault);

    [Theory]
    [InlineData("Savings 5..23")]
    [InlineData("Savings 0..20")]
    [InlineData("Savings 1..2000")]
    [InlineData("Savings 1..1")]
    [InlineData("Holiday 1200 by soon")]
    public void Pot_ThatIsNone_IsRefused(string line) => Assert.IsType<LineFault.RestUnread>(ItemLine.Pot(line, Facts).Fault);

    // Thousands parted by a blank are one amount.
    [Fact]
    public void Bill_WithABlankBetweenThousands_IsRead()
    {
        LineFacts kroner = new(Currency.FromCode("NOK"), NumberStyle.SpaceComma, DateOrder.DayFirst, new(2026, 3, 5));

        Assert.Equal("Husleie | 14500 | monthly 1", Said(ItemLine.Bill("Husleie 14 500,00 1", kroner).Value!));
        Assert.Equal("Leie 3 | 450 | monthly 1", Said(ItemLine.Bill("\"Leie 3\" 450 1", kroner).Value!));
    }

    [Fact]
    public void Bill_InAnotherStyle_IsRead()
    {
        LineFacts euro = new(Currency.FromCode("EUR"), NumberStyle.PointComma, DateOrder.DayFirst, new(2026, 3, 5));

        Assert.Equal("Strom | 118.4 | every 2 months 2026-06-01", Said(ItemLine.Bill("Strom 118,40 every 2 months from 1.6.", euro).Value!));
        Assert.Equal("Strom | 118.4 | every 2 months 2026-06-01", Said(ItemLine.Bill("Strom 118,40 every 2 months from 1.6.2026", euro).Value!));
    }

    /// <summary>Nothing that is typed or pasted brings it down, and what is read has a name and an amount that were there.</summary>
    [Fact]
    public void Any_Text_IsReadOrRefused() => Gen.OneOf(
        Gen.String,
        Gen.OneOf([.. Vocabulary.Select(word => Gen.Const(word))]).Array[0, 12].Select(words => string.Join(' ', words))).Sample(
        line =>
        {
            foreach (Result<ItemDraft> item in new[]
            {
                ItemLine.Bill(line, Facts).Map(one => (ItemDraft)one), ItemLine.Source(line, Facts).Map(one => (ItemDraft)one),
                ItemLine.Debt(line, Facts).Map(one => (ItemDraft)one), ItemLine.Pot(line, Facts).Map(one => (ItemDraft)one),
            })
            {
                Assert.True(item.Ok ? item.Value.Name is not null : item.Fault is LineFault);
            }
        },
        iter: 2000);

    private static string Said(BillDraft bill) => $"{bill.Name} | {Plain(bill.Amount)} | {Said(bill.Schedule)}";

    private static string Said(ScheduleDraft? schedule) => schedule switch
    {
        null => "-",
        { Kind: ScheduleKind.Monthly } => $"monthly {Said(schedule.Day!)}",
        { Kind: ScheduleKind.TwiceMonthly } => $"twice {string.Join(", ", schedule.Days!.Value.Select(day => Said(day!)))}",
        { Kind: ScheduleKind.EveryMonths } => $"every {schedule.Months} months {schedule.Anchor:uuuu-MM-dd}",
        { Kind: ScheduleKind.EveryWeeks } => $"every {schedule.Weeks} weeks {schedule.Anchor:uuuu-MM-dd}",
        { Kind: ScheduleKind.Dates } => $"dates {schedule.Dates!.Value[0]:uuuu-MM-dd}",
        _ => $"{schedule.Kind.ToString()!.ToLowerInvariant()} {schedule.Anchor:uuuu-MM-dd}",
    };

    private static string Said(MonthDay day) => day switch
    {
        MonthDay.Numbered numbered => numbered.Day.ToString(CultureInfo.InvariantCulture),
        MonthDay.LastWorkingDay => "last working",
        MonthDay.NthWeekday nth => $"{nth.Nth} {nth.Weekday}",
        _ => "last",
    };

    private static string Plain(decimal? amount) => amount is { } known ? known.ToString(CultureInfo.InvariantCulture) : "-";
}
