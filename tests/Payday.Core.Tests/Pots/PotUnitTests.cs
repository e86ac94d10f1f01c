using Payday.Core.Cash;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Pots.PotSamples;

namespace Payday.Core.Tests.Pots;

public class PotUnitTests
{
    private static readonly CashPieces Pieces = new([Usd(50), Usd(20), Usd(10)], [Usd(1)]);

    [Theory]
    [InlineData(50)]
    [InlineData(20)]
    [InlineData(10)]
    [InlineData(5)] // can't be kept; the smallest note stands in
    public void Of_CashPot_IsTheSmallestNote(decimal topNote) =>
        Assert.Equal(Usd(10), PotUnit.Of(CashPot with { Notes = new NoteWishes(Usd(topNote)) }, Pieces));

    [Fact]
    public void Of_AccountPot_IsOneMinorUnit() =>
        Assert.Equal(Cents(1), PotUnit.Of(CashPot with { Place = Place.Account }, Pieces));

    private static Pot CashPot => Pot(new PotKind.Spending(Usd(10), FillPer.Week));
}
