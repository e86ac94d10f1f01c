using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Store.HouseholdFiles;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class LeftOverTests
{
    [Theory]
    [InlineData("\"stays\"", null)]
    [InlineData("\"buffer\"", "Buffer:")]
    [InlineData("{\"pot\":\"roof\"}", "Pot:roof")]
    [InlineData("{\"pot\":\"ROOF\"}", "Pot:roof")]
    [InlineData("{\"debt\":\"Card\"}", "Debt:card")]
    public void Read_EachWay_IsReadAndWrittenAgain(string written, string? target)
    {
        string json = SmallHousehold.Json.Replace("\"rank\": 1,", $"\"rank\": 1, \"leftOver\": {written},", StringComparison.Ordinal);

        Household household = HouseholdFile.Read(json).Value!;
        Household again = HouseholdFile.Read(HouseholdFile.Write(household)).Value!;

        MoveTarget? read = household.Pots[0].MovesOnTo;
        Assert.Equal(target, read is null ? null : $"{read.Kind}:{read.IdText}");
        Assert.Equal(read, again.Pots[0].MovesOnTo);
    }
}
