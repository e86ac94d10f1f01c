using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class HouseholdFileWriteTests
{
    [Fact]
    public void Write_AnyHousehold_ReadsBackTheSameAndWritesTheSameBytes() =>
        GenHousehold.Any.Sample(household =>
        {
            string json = HouseholdFile.Write(household);
            JsonReading<Household> reading = HouseholdFile.Read(json);

            Assert.Empty(reading.Faults.Select(fault => fault.ToString()));
            Assert.Equal(Structure.Of(household), Structure.Of(reading.Value));
            Assert.Equal(json, HouseholdFile.Write(reading.Value!));
        }, iter: 100);

    [Fact]
    public void Write_OneOfEverything_IsTheFileItWasReadFrom() =>
        Assert.Equal(SmallHousehold.Json, HouseholdFile.Write(HouseholdFile.Read(SmallHousehold.Json).Value!));

    [Fact]
    public void Write_AnotherCurrencyInside_Throws()
    {
        Household household = HouseholdFile.Read(SmallHousehold.Json).Value!;
        Household mixed = household with
        {
            Bills = [household.Bills[0] with { Amount = Money.FromUnits(1, Currency.FromCode("EUR")) }],
        };

        Assert.Throws<ArgumentException>(() => HouseholdFile.Write(mixed));
    }

    [Fact]
    public void Write_OpeningPartOfNoBill_ThrowsRatherThanLosingIt()
    {
        Household household = HouseholdFile.Read(SmallHousehold.Json).Value!;
        ImmutableSortedDictionary<BillId, Money> parts = household.Opening.SetAside.Add(new BillId("gas"), Money.FromUnits(1, household.Currency));

        Assert.Throws<ArgumentException>(() => HouseholdFile.Write(household with { Opening = household.Opening with { SetAside = parts } }));
    }
}
