using Payday.Core.Households;
using Payday.Store.Changes;
using Payday.Store.HouseholdFiles;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class StoredNameTests
{
    [Fact]
    public void Read_PotCalledBuffer_SaysWhere() => Assert.Equal(
        ["pots[1].name, line 99: \"Buffer\" is what Payday calls something else; choose another name."],
        HouseholdFile.Read(SmallHousehold.With("\"Roof\"", "\"Buffer\"")).Faults.Select(fault => fault.ToString()));

    [Theory]
    [InlineData("Buffer")]
    [InlineData("Food\u200D")]
    [InlineData("\u2800")]
    public void Open_StoreThatHasSuchAName_OpensAndGoesOn(string name)
    {
        // Stored once by a program that took such names.
        using var scratch = new ScratchFolder();
        Household household = Samples.Household with { Pots = [.. Samples.Household.Pots.Select((pot, i) => i == 1 ? pot with { Name = name } : pot)] };
        Assert.False(HouseholdFile.Read(HouseholdFile.Write(household)).Ok);
        using (BookStore store = BookStore.Open(scratch.Data))
        {
            store.Save(Samples.Beginning with { Household = household });
        }

        using (BookStore store = BookStore.Open(scratch.Data))
        {
            Assert.Equal(name, store.Load()!.Household.Pots[1].Name);
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
        }

        File.Delete(scratch.Data.Database);
        using BookStore again = BookStore.Open(scratch.Data);
        Assert.Equal(name, again.Load()!.Household.Pots[1].Name);
    }
}
