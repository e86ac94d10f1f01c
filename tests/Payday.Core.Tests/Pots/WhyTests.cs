using Payday.Core.Amounts;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Pots.PotSamples;

namespace Payday.Core.Tests.Pots;

public class WhyTests
{
    [Theory]
    [InlineData("USD", 1000, "1,234.56", "1,000")]
    [InlineData("USD", 1000.50, "1.234,56", "1.000,50")]
    [InlineData("EUR", 1000, "1.234,56", "1.000")]
    [InlineData("JPY", 100000, "1,234.56", "100,000")]
    [InlineData("KWD", 1.5, "1234.56", "1.500")]
    [InlineData("SEK", 2500, "1 234,56", "2 500")]
    public void Propose_Reason_IsWrittenInTheStyleOfTheHousehold(string code, decimal level, string style, string text)
    {
        PotFacts facts = Facts with
        {
            Balance = Of(0, code),
            Numbers = NumberStyle.All.Single(s => s.Sample == style),
        };

        Assert.Equal($"to {text}", Propose(new PotKind.Reserve(Of(level, code), Of(1, code)), facts).Why);
    }

    [Fact]
    public void Propose_Reason_FitsItsColumn()
    {
        PotFacts facts = Facts with { Months = Months(March("2 6 9 16 23")), Sinking = Saving(new(2027, 12, 31)), PaydaysLeft = 26 };
        Money large = Usd(12_345.60m);
        PotKind[] purposes =
        [
            new PotKind.Spending(large, FillPer.Week),
            new PotKind.Spending(large, FillPer.Payday),
            new PotKind.Spending(large, FillPer.Month),
            new PotKind.Sinking(large, new(2027, 12, 31)),
            new PotKind.Ladder(Usd(1), 1000, LadderOrder.Rising),
            new PotKind.Reserve(large, Usd(1)),
        ];

        Assert.All(purposes, kind => Assert.InRange(Propose(kind, facts).Why.Length, 1, 28));
        Assert.All(Enum.GetValues<SinkingStage>(), stage => Assert.InRange(
            Propose(purposes[3], facts with { Sinking = new SinkingState(stage, new(2026, 12, 31), large) }).Why.Length, 1, 28));
        Assert.InRange(Propose(purposes[2], facts with { Months = Months(March("1 6 9"), 0.40m) }).Why.Length, 1, 28);
        Assert.InRange(Propose(purposes[2], facts with { Months = Months(March("2 +6"), 0) }).Why.Length, 1, 28);
    }
}
