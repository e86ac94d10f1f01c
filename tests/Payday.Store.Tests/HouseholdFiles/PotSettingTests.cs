using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Store.HouseholdFiles;

namespace Payday.Store.Tests.HouseholdFiles;

/// <summary>What pots have since version 2 of the file, and what a file of version 1 means without it.</summary>
public sealed class PotSettingTests
{
    private const string Month = "\"per\": \"month\"";

    private const string By = "\"by\": \"2027-05-01\"";

    [Theory]
    [InlineData("", false)]
    [InlineData(", \"weeks\": \"once\"", false)]
    [InlineData(", \"weeks\": \"split\"", true)]
    public void Read_Weeks_IsReadAndWrittenAgain(string written, bool splits)
    {
        Household household = Sound(SmallHousehold.With("\"per\": \"week\"", Month + written));

        Assert.Equal(splits, ((PotKind.Spending)household.Pots[0].Kind).GoesWeekByWeek);
        Assert.Equal(household.Pots[0].Kind, Sound(HouseholdFile.Write(household)).Pots[0].Kind);
    }

    [Fact]
    public void Read_WhatASinkingPotHas_IsReadAndWrittenAgain()
    {
        Household household = Sound(SmallHousehold.With(
            By, By + ", \"repeats\": {\"kind\":\"yearly\",\"anchor\":\"2027-05-01\"}, \"settledTo\": \"2026-04-02\", \"finished\": true"));

        Assert.Equal(
            new PotKind.Sinking(household.Pots[1].Kind is PotKind.Sinking kind ? kind.Target : default, new(2027, 5, 1))
            {
                Repeats = new Schedule.EveryMonths(12, new(2027, 5, 1)),
                SettledTo = new(2026, 4, 2),
                Finished = true,
            },
            household.Pots[1].Kind);
        Assert.Equal(household.Pots[1].Kind, Sound(HouseholdFile.Write(household)).Pots[1].Kind);
    }

    [Fact]
    public void Read_Version1_MeansWhatItSays()
    {
        string old = SmallHousehold.With("\"version\": 3", "\"version\": 1").Replace("\"per\": \"week\"", Month, StringComparison.Ordinal);

        Household household = Sound(old);

        Assert.False(((PotKind.Spending)household.Pots[0].Kind).GoesWeekByWeek);
        Assert.Equal((null, null, false), household.Pots[1].Kind is PotKind.Sinking kind ? (kind.Repeats, kind.SettledTo, kind.Finished) : default);
        Assert.Contains("\"version\": 3", HouseholdFile.Write(household), StringComparison.Ordinal);
    }

    private static Household Sound(string json)
    {
        var reading = HouseholdFile.Read(json);
        Assert.Empty(reading.Faults.Select(fault => fault.ToString()));
        return reading.Value!;
    }
}
