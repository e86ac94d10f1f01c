using CsCheck;
using Payday.Core.Amounts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Amounts;

public class MoneyAllocateTests
{
    [Theory]
    // Largest remainder (Hamilton), ties to the earlier; secondary page, and computed.
    [InlineData(10, "33 33 34", "3 3 4")]
    [InlineData(160, "331 267 133 69", "66 53 27 14")]
    // The Alabama paradox: one more to share, and the third gets less.
    [InlineData(10, "6 6 2", "4 4 2")]
    [InlineData(11, "6 6 2", "5 5 1")]
    // Foemmel's conundrum: Fowler, Patterns of Enterprise Application Architecture; secondary page.
    [InlineData(5, "3 7", "2 3")]
    [InlineData(-5, "3 7", "-2 -3")]
    [InlineData(0, "1 2", "0 0")]
    [InlineData(7, "0 5 0", "0 7 0")]
    [InlineData(2, "1 1 1", "1 1 0")]
    public void Allocate_PublishedValues_Match(long cents, string weights, string shares)
    {
        long[] parsed = [.. weights.Split(' ').Select(long.Parse)];

        Assert.Equal(shares, string.Join(' ', Cents(cents).Allocate(parsed).Select(share => share.MinorUnits)));
    }

    [Fact]
    public void Allocate_WholeRange_LosesNothing()
    {
        foreach (long amount in new[] { long.MaxValue, long.MinValue })
        {
            Money[] shares = [.. Cents(amount).Allocate(long.MaxValue, long.MaxValue, 1)];

            Assert.Equal(Cents(amount), Money.Sum(shares, Dollars));
        }

        Assert.Equal([Cents(long.MinValue)], Cents(long.MinValue).Allocate(1));
    }

    [Fact]
    public void Allocate_BadWeights_Throws()
    {
        Assert.Throws<ArgumentException>(() => Usd(1).Allocate());
        Assert.Throws<ArgumentException>(() => Usd(1).Allocate(0, 0));
        Assert.Throws<ArgumentException>(() => Usd(1).Allocate(2, -1));
    }

    [Fact]
    public void Allocate_AnyWeights_LosesNothingAndKeepsTheQuota() =>
        Gen.Select(Gen.Long[-1_000_000, 1_000_000], Gen.Long[0, 1_000].Array[1, 12])
            .Where((_, weights) => weights.Sum() > 0)
            .Sample((amount, weights) =>
            {
                var shares = Cents(amount).Allocate(weights);
                bool inQuota = shares.Zip(weights).All(pair =>
                    Math.Abs(((decimal)amount * pair.Second / weights.Sum()) - pair.First.MinorUnits) < 1);
                return inQuota && Money.Sum(shares, Dollars) == Cents(amount);
            });
}
