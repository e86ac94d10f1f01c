using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Pots.PotSamples;

namespace Payday.Core.Tests.Pots;

/// <summary>Sinking pots and reserves.</summary>
public class SavingFillTests
{
    private static readonly LocalDate May = new(2026, 5, 1);

    [Theory]
    [InlineData(80, 3, 40, "120 short, 3 paydays")]
    [InlineData(75, 3, 45, "125 short, 3 paydays")] // 45, 40, 40: the spare five first
    [InlineData(197, 3, 0, "3 short, 3 paydays")] // less than a five waits for the last
    [InlineData(197, 1, 3, "3 short by 1 May")]
    [InlineData(80, 0, 120, "120 short by 1 May")] // no payday strictly before the date
    [InlineData(200, 3, 0, "full")]
    [InlineData(210, 3, 0, "full")]
    [InlineData(-10, 3, 70, "210 short, 3 paydays")]
    public void Propose_Sinking_SpreadsWhatIsMissing(decimal balance, int paydays, decimal fill, string why) =>
        Assert.Equal(
            Saved(fill, why),
            Propose(
                new PotKind.Sinking(Usd(200), May),
                Facts with { Sinking = Saving(May), Balance = Usd(balance), PaydaysLeft = paydays }));

    [Fact]
    public void Propose_SinkingInTheAccount_SpreadsToTheCent() =>
        Assert.Equal(
            Saved(18.75m, "75 short, 4 paydays"),
            Propose(
                new PotKind.Sinking(Usd(225), May),
                Facts with { Sinking = Saving(May), Balance = Usd(150), PaydaysLeft = 4, Unit = Cents(1) }));

    [Theory]
    [InlineData(SinkingStage.PastItsDate, 80, "120 short since 1 May")]
    [InlineData(SinkingStage.Bought, 80, "60 spent: bought?")]
    [InlineData(SinkingStage.Finished, 80, "finished")]
    [InlineData(SinkingStage.Saving, 200, "full since 1 May, waits")]
    public void Propose_SinkingPastItsDate_PutsNothingIn(SinkingStage stage, decimal balance, string why) =>
        Assert.Equal(
            new FillProposal(Usd(0), why) { Stage = stage },
            Propose(
                new PotKind.Sinking(Usd(200), May),
                Facts with { Balance = Usd(balance), Payday = May.PlusDays(14), PaydaysLeft = 0, Sinking = new SinkingState(stage, May, Usd(60)) }));

    [Fact]
    public void Propose_SinkingPaydayAfterPayday_IsExactByTheDate() =>
        Gen.Select(Gen.Int[1, 500_000], Gen.Int[0, 500_000], Gen.Int[1, 30], Gen.OneOf(1, 500, 2_000)).Sample((target, start, paydays, unit) =>
        {
            Money balance = Cents(start);
            List<Money> fills = [];
            for (int left = paydays; left > 0; left--)
            {
                Money fill = Propose(
                    new PotKind.Sinking(Cents(target), May),
                    Facts with { Sinking = Saving(May), Balance = balance, PaydaysLeft = left, Unit = Cents(unit) }).Amount;
                fills.Add(fill);
                balance += fill;
            }

            // Level in whole units: never rising but for the odd part at the end, and no two further apart than a unit.
            List<Money> whole = [.. fills.Select(fill => fill.FloorTo(Cents(unit)))];
            return balance == Cents(Math.Max(target, start))
                && fills.All(fill => !fill.IsNegative)
                && fills.SkipLast(1).SequenceEqual(whole.SkipLast(1))
                && whole.SequenceEqual(whole.OrderDescending())
                && whole[0] - whole[^1] <= Cents(unit);
        });

    private static FillProposal Saved(decimal fill, string why) => new(Usd(fill), why) { Stage = SinkingStage.Saving };

    [Theory]
    [InlineData(610, 90, "to 1,000")]
    [InlineData(950, 50, "to 1,000")]
    [InlineData(1000, 0, "full")]
    [InlineData(1200, 0, "full")]
    [InlineData(-50, 90, "to 1,000")]
    public void Propose_Reserve_FillsUpToItsLevel(decimal balance, decimal fill, string why) =>
        Assert.Equal(
            new FillProposal(Usd(fill), why),
            Propose(new PotKind.Reserve(Usd(1000), Usd(90)), Facts with { Balance = Usd(balance) }));
}
