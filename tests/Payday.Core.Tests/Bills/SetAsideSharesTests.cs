using System.Collections.Immutable;
using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;
using static Payday.Core.Tests.Bills.Plans;

namespace Payday.Core.Tests.Bills;

public class SetAsideSharesTests
{
    // Bills as name, what it holds and what is due now; later dues as day, bill and amount.
    [Theory]
    [InlineData("a 0/100 b 0/50", 150, "", "a 100 b 50")]
    [InlineData("a 0/100 b 0/50", 120, "", "a 100 b 20")] // in household order
    [InlineData("a 30/100 b 0/50", 120, "", "a 100 b 50")]
    [InlineData("a 0/0 b 0/0", 70, "20 b 50 / 25 a 100", "a 20 b 50")] // the earliest of the later ones first
    [InlineData("a 0/0 b 20/0", 70, "20 b 50 / 25 a 100", "a 40 b 50")] // what it holds already counts
    [InlineData("a 10/0 b 0/40", 60, "20 a 15 / 22 a 30", "a 30 b 40")]
    [InlineData("a 80/0 b 0/100", 50, "20 a 80", "a 30 b 100")] // taken from another that isn't due
    [InlineData("a 80/0 b 60/0 c 0/100", 0, "20 a 80 / 25 b 60", "a 40 b 0 c 100")] // first from the one due furthest away
    [InlineData("a 80/0 b 60/0 c 0/100", 0, "20 a 80", "a 40 b 0 c 100")] // from one that is due no more before that
    [InlineData("a 80/60 b 0/100", 0, "20 a 80", "a 60 b 20")] // but not what it needs itself
    public void After_WhatIsSetAside_GoesWhereItIsNeededFirst(string bills, long setAside, string later, string after)
    {
        BillNeed[] needs = [.. Parts(bills, 2).Select(part => Need(part[0], part[1].Split('/')))];
        Due[] dues = [.. later.Split('/', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(due => due.Split(' ')).Select(due => DueOn(int.Parse(due[0], null), long.Parse(due[2], null), due[1]))];

        Assert.Equal(after, string.Join(' ', SetAsideShares.After(needs, Cents(setAside), dues).Select((held, i) => $"{needs[i].BillId.Text} {held.MinorUnits}")));
    }

    [Fact]
    public void After_MoreThanAllDuesNeed_IsRefused()
    {
        BillNeed[] needs = [Need("a", ["0", "100"])];

        Assert.Throws<ArgumentException>(() => SetAsideShares.After(needs, Cents(151), [DueOn(20, 50, "a")]));
    }

    [Fact]
    public void After_AnyBills_LosesNothingAndCoversWhatIsDueAsFarAsItReaches()
    {
        Gen<long> amounts = Gen.Long[0, 200];
        Gen.Select(Gen.Select(amounts, amounts).Array[1, 5], Gen.Select(Gen.Int[0, 4], Gen.Int[10, 28], amounts).Array[0, 6], amounts).Sample((bills, dues, wish) =>
        {
            BillNeed[] needs = [.. bills.Select((bill, i) => new BillNeed(new BillId($"b{i}"), Cents(bill.Item1), Cents(bill.Item2)))];
            Due[] later = [.. dues.Where(due => due.Item1 < needs.Length).OrderBy(due => due.Item2).Select(due => DueOn(due.Item2, due.Item3, $"b{due.Item1}"))];
            long lacking = needs.Sum(need => Math.Max(0, need.DueNow.MinorUnits - need.Held.MinorUnits));
            long most = lacking + later.Sum(due => due.Amount.MinorUnits) - needs.Sum(need => Math.Min(
                Math.Max(0, need.Held.MinorUnits - need.DueNow.MinorUnits), later.Where(due => due.BillId == need.BillId).Sum(due => due.Amount.MinorUnits)));
            long setAside = Math.Min(wish, most);

            ImmutableArray<Money> after = SetAsideShares.After(needs, Cents(setAside), later);

            long held = needs.Sum(need => need.Held.MinorUnits);
            Assert.Equal(held + setAside, after.Sum(amount => amount.MinorUnits));
            Assert.All(after, amount => Assert.False(amount.IsNegative));
            long covered = needs.Select((need, i) => Math.Min(need.DueNow.MinorUnits, after[i].MinorUnits)).Sum();
            Assert.Equal(Math.Min(needs.Sum(need => need.DueNow.MinorUnits), held + setAside), covered);
        });
    }

    private static IEnumerable<string[]> Parts(string text, int size) => text.Split(' ').Chunk(size);

    private static BillNeed Need(string name, string[] amounts) => new(new BillId(name), Cents(long.Parse(amounts[0], null)), Cents(long.Parse(amounts[1], null)));
}
