using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class HouseholdFileReadTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");

    [Fact]
    public void Read_OneOfEverything_GivesEachValue()
    {
        Household household = Sound(SmallHousehold.Json);

        Assert.Equal("Reed house", household.Name);
        Assert.Equal(new LocalDate(2026, 3, 5), household.Start);
        Assert.Equal(NumberStyle.CommaPoint, household.Settings.Numbers);
        Assert.Equal([Dollars(100), Dollars(20), Dollars(5)], household.Settings.Cash.Notes);
        Assert.Equal([Cents(25)], household.Settings.Cash.Coins);
        Assert.Equal(IsoDayOfWeek.Friday, household.Settings.FillDay);
        Assert.Equal(HolidaySet.UnitedStates, household.Settings.Holidays.Set);
        Assert.Equal([new LocalDate(2026, 11, 27)], household.Settings.Holidays.Extra);
        var machine = Assert.IsType<CashSource.Machine>(household.Settings.Bank);
        Assert.Equal([Dollars(20)], machine.Notes);
        Assert.Equal(Dollars(500), machine.Limit);
        Assert.Equal(["Thank you"], household.Settings.SlipLines);

        Assert.Equal(
            new IncomeSource(new SourceId("wage"), "Wage", new Schedule.EveryWeeks(2, new LocalDate(2026, 3, 6)), Shift.Before, Cents(171235), new LocalDate(2030, 12, 31)),
            Assert.Single(household.Sources));
        Assert.Equal(
            new Bill(new BillId("rent"), "Rent", Dollars(840), new Schedule.Monthly(new MonthDay.Numbered(31)), Shift.Before, Essential: true),
            Assert.Single(household.Bills));
        Assert.Equal(
            new Debt(new DebtId("card"), "Card", Dollars(450), 0.1999m, new MinimumRule.PercentOrFloor(0.02m, Dollars(20)), new MonthDay.Last()),
            Assert.Single(household.Debts));
        Assert.Equal(
            [
                new Pot(new PotId("food"), "Food", Place.Cash, 1, Dollars(60), new PotKind.Spending(Dollars(85), FillPer.Week), new NoteWishes(Dollars(20), new SmallMoney(Dollars(5), Dollars(25)))),
                new Pot(new PotId("roof"), "Roof", Place.Account, 2, Dollars(0), new PotKind.Sinking(Dollars(1200), new LocalDate(2027, 5, 1)), NoteWishes.None),
            ],
            household.Pots);

        Assert.Equal(Dollars(900), household.Opening.Account);
        Assert.Equal([KeyValuePair.Create(new BillId("rent"), Dollars(300))], household.Opening.SetAside);
        Assert.Equal([KeyValuePair.Create(new PotId("roof"), Dollars(150))], household.Opening.Pots);
        Assert.Equal([KeyValuePair.Create(2000L, 3)], household.Opening.LooseNotes);
    }

    [Fact]
    public void Read_OnlyWhatIsRequired_TakesTheDefaults()
    {
        Household household = Sound("""
            {"version": 1, "name": "  Reed house ", "start": "2026-03-05", "currency": "JPY", "notes": ["1000", "10000", "500"], "coins": [],
             "fillDay": "Saturday", "holidays": "none",
             "sources": [{"name": "Wage", "schedule": {"kind": "dates", "dates": []}, "shift": "none", "expected": "0"}]}
            """);

        Assert.Equal("Reed house", household.Name);
        Assert.Equal([10_000L, 1_000L, 500L], household.Settings.Cash.Notes.Select(note => note.MinorUnits));
        Assert.Empty(household.Settings.Cash.Coins);
        Assert.Equal(SetAsideMode.Level, household.Settings.SetAsides);
        Assert.IsType<CashSource.Teller>(household.Settings.Bank);
        Assert.Equal(CardRounding.Up, household.Settings.CardRounding);
        Assert.Equal(DebtOrder.SmallestBalance, household.Settings.SurplusOrder);
        Assert.Empty(household.Settings.SlipLines);
        Assert.True(household.Opening.Account.IsZero);
        Assert.Equal("wage", Assert.Single(household.Sources).Id.Text);
        Assert.Empty(household.Bills);
        Assert.Empty(household.Pots);
    }

    [Theory]
    [InlineData("", "100 50 20 10 5 1", "0.25 0.10 0.05 0.01")]
    [InlineData("\"notes\": [\"20\", \"5\"],", "20 5", "0.25 0.10 0.05 0.01")]
    [InlineData("\"notes\": [\"20\", \"0.25\"],", "20 0.25", "0.10 0.05 0.01")]
    [InlineData("\"coins\": [\"1\"],", "100 50 20 10 5 1", "1")]
    [InlineData("\"coins\": [],", "100 50 20 10 5 1", "")]
    public void Read_NotesOrCoinsLeftOut_TakesTheUsualOnesOfTheCurrency(string written, string notes, string coins)
    {
        Household household = Sound($$"""
            {"version": 1, "name": "Reed house", "start": "2026-03-05", "currency": "USD", {{written}}
             "fillDay": "Saturday", "holidays": "none",
             "sources": [{"name": "Wage", "schedule": {"kind": "dates", "dates": []}, "shift": "none", "expected": "0"}]}
            """);

        Assert.Equal(Values(notes), household.Settings.Cash.Notes);
        Assert.Equal(Values(coins), household.Settings.Cash.Coins);
        Assert.Contains("\"notes\": [", HouseholdFile.Write(household), StringComparison.Ordinal);
        Assert.Contains("\"coins\": [", HouseholdFile.Write(household), StringComparison.Ordinal);

        static Money[] Values(string text) =>
            [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(value => Cents((long)(decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture) * 100)))];
    }

    [Fact]
    public void Read_NotesLeftOut_ChecksTheRestAgainstTheUsualOnes()
    {
        JsonReading<Household> reading = HouseholdFile.Read(SmallHousehold.With("\"notes\": [\n    \"100\",\n    \"20\",\n    \"5\"\n  ],", "")
            .Replace("\"topNote\": \"20\"", "\"topNote\": \"2\"", StringComparison.Ordinal));

        Assert.Equal("There is no note of 2 in use; write one of 100, 50, 20, 10, 5, 1.", Assert.Single(reading.Faults).Sentence);
    }

    [Fact]
    public void Read_NoIds_DerivesThemFromTheNamesAroundThoseWritten()
    {
        const string Purpose = "\"kind\": \"spending\", \"amount\": \"1.00\", \"per\": \"payday\", \"held\": \"account\"";
        string pots = string.Join(", ", ((string[])["\"name\": \"Kids' shoes!\"", "\"name\": \"猫\"", "\"name\": \"Kids shoes\"", "\"name\": \"Fun\", \"id\": \"kids-shoes\""])
            .Select(start => $"{{{start}, {Purpose}}}"));

        Household household = Sound(WithPots(pots));

        Assert.Equal(["kids-shoes-2", "pot", "kids-shoes-3", "kids-shoes"], household.Pots.Select(pot => pot.Id.Text));
    }

    [Theory]
    [InlineData(new[] { "", "", "" }, new[] { 1, 2, 3 })]
    [InlineData(new[] { "", "", "1" }, new[] { 2, 3, 1 })]
    [InlineData(new[] { "9", "", "2" }, new[] { 9, 1, 2 })]
    public void Read_RanksLeftOut_TakeTheNumbersLeftOver(string[] written, int[] expected)
    {
        string pots = string.Join(", ", written.Select((rank, i) =>
            $"{{\"name\": \"Pot {i}\", {(rank.Length == 0 ? "" : $"\"rank\": {rank},")} \"kind\": \"spending\", \"amount\": \"1.00\", \"per\": \"payday\", \"held\": \"cash\"}}"));

        Assert.Equal(expected, Sound(WithPots(pots)).Pots.Select(pot => pot.Rank));
    }

    [Fact]
    public void Read_AmountWithFewerDecimals_IsTheSameAmount() =>
        Assert.Equal(Dollars(840), Sound(SmallHousehold.With("\"840.00\"", "\"840\"")).Bills[0].Amount);

    [Fact]
    public void Read_ByteOrderMark_IsTakenOff() => Sound("\uFEFF" + SmallHousehold.Json);

    private static string WithPots(string pots)
    {
        string json = SmallHousehold.Json;
        return json[..json.IndexOf("\"pots\": [", StringComparison.Ordinal)] + $"\"pots\": [{pots}]}}";
    }

    private static Household Sound(string json)
    {
        JsonReading<Household> reading = HouseholdFile.Read(json);
        Assert.Empty(reading.Faults.Select(fault => fault.ToString()));
        return reading.Value!;
    }

    private static Money Dollars(long units) => Money.FromUnits(units, Usd);

    private static Money Cents(long cents) => Money.FromMinorUnits(cents, Usd);
}
