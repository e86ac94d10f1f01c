using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Store.HouseholdFiles;

namespace Payday.Store.Tests.HouseholdFiles;

/// <summary>What a file says since version 3: amounts that change from a date on, and an account below zero.</summary>
public sealed class LaterAmountFileTests
{
    private const string Amount = "\"amount\": \"840.00\"";

    [Fact]
    public void Read_Changes_AreReadAndWrittenAgain()
    {
        Household household = Sound(SmallHousehold.With(Amount, Amount + ", \"later\": [{\"from\": \"2027-01-01\", \"amount\": \"860.00\"}, {\"from\": \"2028-01-01\", \"amount\": \"0\"}]"));

        Assert.Equal(LaterAmounts.Of(new(new(2027, 1, 1), Usd(86000)), new(new(2028, 1, 1), Usd(0))), household.Bills[0].Later);
        Assert.Equal(household.Bills[0], Sound(HouseholdFile.Write(household)).Bills[0]);
    }

    [Fact]
    public void Read_ChangesOfAPot_AreThoseOfItsKind()
    {
        Household household = Sound(SmallHousehold.With("\"by\": \"2027-05-01\"", "\"by\": \"2027-05-01\", \"later\": [{\"from\": \"2027-01-01\", \"amount\": \"1300.00\"}]"));

        Assert.Equal(Usd(130000), ((PotKind.Sinking)household.Pots[1].Kind).TargetBy(new(2027, 5, 1)));
        Assert.Equal(household.Pots[1].Kind, Sound(HouseholdFile.Write(household)).Pots[1].Kind);
    }

    [Fact]
    public void Write_NoChange_SaysNothing() => Assert.DoesNotContain("later", HouseholdFile.Write(Sound(SmallHousehold.Json)), StringComparison.Ordinal);

    [Theory]
    [InlineData("{\"from\": \"2027-01-01\"}", "bills[0].later[0].amount, line %: This is missing; ")]
    [InlineData("{\"amount\": \"1\"}", "bills[0].later[0].from, line %: This is missing; ")]
    [InlineData("{\"from\": \"2027-01-01\", \"amount\": \"-1\"}", "bills[0].later[0].amount, line %: This amount is ")]
    [InlineData("{\"from\": \"2026-03-04\", \"amount\": \"1\"}", "bills[0].later[0].from, line %: 2026-03-04 is before the household starts, 2026-03-05; write a later date.")]
    [InlineData("{\"from\": \"2027-01-01\", \"amount\": \"1\"}, {\"from\": \"2026-12-31\", \"amount\": \"2\"}", "bills[0].later[1].from, line %: 2026-12-31 is not after 2027-01-01, the date of the change before it; write them in the order of their dates, each date once.")]
    [InlineData("{\"from\": \"2027-01-01\", \"amount\": \"1\", \"to\": 1}", "bills[0].later[0].to, line %: ")]
    [InlineData("5", "bills[0].later[0], line %: ")]
    public void Read_AFaultInAChange_SaysWhere(string changes, string expected)
    {
        string json = SmallHousehold.With(Amount, Amount + $", \"later\": [{changes}]");
        int line = json[..json.IndexOf("\"later\"", StringComparison.Ordinal)].Count(letter => letter == '\n') + 1;

        Assert.StartsWith(expected.Replace("%", line.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal), Assert.Single(HouseholdFile.Read(json).Faults).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AnAccountBelowZero_IsReadAndWrittenAgain()
    {
        string json = """
            {"version": 3, "name": "Reed house", "start": "2026-03-05", "currency": "USD", "fillDay": "Friday", "holidays": "none", "overdraft": "300", "opening": {"account": "-12.50"},
             "sources": [{"name": "Wage", "schedule": {"kind": "monthly", "day": 1}, "shift": "none", "expected": "10"}]}
            """;
        Household household = Sound(json);

        Assert.Equal((Usd(-1250), Usd(30000)), (household.Opening.Account, household.Settings.Overdraft));
        Assert.Contains("\"account\": \"-12.50\"", HouseholdFile.Write(household), StringComparison.Ordinal);
        Assert.Equal(HouseholdFile.Write(household), HouseholdFile.Write(Sound(HouseholdFile.Write(household))));
    }

    [Fact]
    public void Read_Version2_MeansWhatItSays()
    {
        Household household = Sound(SmallHousehold.With("\"version\": 3", "\"version\": 2"));

        Assert.Empty(household.Bills[0].Later.All);
        Assert.Null(household.Settings.Overdraft);
    }

    private static Money Usd(long cents) => Money.FromMinorUnits(cents, Currency.FromCode("USD"));

    private static Household Sound(string json)
    {
        var reading = HouseholdFile.Read(json);
        Assert.Empty(reading.Faults.Select(fault => fault.ToString()));
        return reading.Value!;
    }
}
