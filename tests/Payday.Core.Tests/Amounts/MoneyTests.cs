using CsCheck;
using Payday.Core.Amounts;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Amounts;

public class MoneyTests
{
    private static readonly Money Largest = Cents(long.MaxValue);
    private static readonly Money Smallest = Cents(long.MinValue);

    [Fact]
    public void Operators_OnAmounts_AreExact()
    {
        Assert.Equal(Usd(0.30m), Usd(0.10m) + Usd(0.20m));
        Assert.Equal(Usd(-0.10m), Usd(0.10m) - Usd(0.20m));
        Assert.Equal(Usd(37.50m), Usd(12.50m) * 3);
        Assert.Equal(Usd(-1), -Usd(1));
        Assert.Equal(Usd(6), Money.Sum([Usd(1), Usd(2), Usd(3)], Dollars));
        Assert.Equal(Usd(0), Money.Sum([], Dollars));
        Assert.Equal(Usd(1), Money.Min(Usd(1), Usd(2)));
        Assert.Equal(Usd(2), Money.Max(Usd(1), Usd(2)));
        Assert.Equal(Usd(0), Usd(-3).ClampToZero());
    }

    [Fact]
    public void Operators_OutOfRange_Throw()
    {
        Assert.Throws<OverflowException>(() => Largest + Cents(1));
        Assert.Throws<OverflowException>(() => Smallest - Cents(1));
        Assert.Throws<OverflowException>(() => -Smallest);
        Assert.Throws<OverflowException>(() => Largest * 2);
        Assert.Throws<OverflowException>(() => Money.FromUnits(long.MaxValue, Dollars));
        Assert.Throws<OverflowException>(() => Smallest.FloorTo(Cents(3)));
        Assert.Throws<OverflowException>(() => Largest.CeilingTo(Cents(2)));
        Assert.Throws<OverflowException>(() => Largest.RoundTo(Cents(1_000)));
        Assert.Throws<OverflowException>(() => Largest.Times(2));
        Assert.Throws<OverflowException>(() => Money.Sum([Largest, Cents(1)], Dollars));
    }

    [Fact]
    public void Operators_OnTwoCurrencies_Throw()
    {
        Money dollar = Usd(1);
        Money euro = Of(1, "EUR");

        Assert.Throws<InvalidOperationException>(() => dollar + euro);
        Assert.Throws<InvalidOperationException>(() => dollar - euro);
        Assert.Throws<InvalidOperationException>(() => dollar < euro);
        Assert.Throws<InvalidOperationException>(() => dollar >= euro);
        Assert.Throws<InvalidOperationException>(() => dollar.FloorTo(euro));
        Assert.Throws<InvalidOperationException>(() => dollar.RoundTo(euro));
        Assert.Throws<InvalidOperationException>(() => Money.Sum([dollar, euro], Dollars));
        Assert.Throws<InvalidOperationException>(() => dollar + default(Money));
        Assert.NotEqual(dollar, euro);
    }

    [Fact]
    public void AddThenSubtract_AnyAmounts_GivesTheFirst() =>
        Gen.Select(Gen.Long[-1_000_000_000, 1_000_000_000], Gen.Long[-1_000_000_000, 1_000_000_000])
            .Sample((a, b) => Cents(a) + Cents(b) - Cents(b) == Cents(a) && (Cents(a) < Cents(b)) == (a < b));
}
