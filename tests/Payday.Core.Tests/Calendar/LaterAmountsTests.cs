using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Calendar;

public sealed class LaterAmountsTests
{
    private static readonly LaterAmounts Twice = LaterAmounts.Of(new(new(2027, 1, 1), Usd(1480)), new(new(2028, 1, 1), Usd(1510)));

    [Theory]
    [InlineData("2026-03-01", 1450)]
    [InlineData("2026-12-31", 1450)]
    [InlineData("2027-01-01", 1480)]
    [InlineData("2027-12-31", 1480)]
    [InlineData("2028-01-01", 1510)]
    [InlineData("2040-01-01", 1510)]
    public void On_Day_IsTheLastChangeUpToIt(string day, decimal amount) =>
        Assert.Equal(Usd(amount), Twice.On(NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value, Usd(1450)));

    [Fact]
    public void On_NoChange_IsTheFirst() => Assert.Equal(Usd(7), LaterAmounts.None.On(new(2030, 1, 1), Usd(7)));

    [Fact]
    public void After_Day_IsTheNextChange()
    {
        Assert.Equal(new LocalDate(2028, 1, 1), Twice.After(new(2027, 1, 1))?.From);
        Assert.Null(Twice.After(new(2028, 1, 1)));
    }

    [Fact]
    public void Of_DatesNotRising_Throws()
    {
        Assert.Throws<ArgumentException>(() => LaterAmounts.Of(new LaterAmount(new(2027, 1, 1), Usd(1)), new(new(2027, 1, 1), Usd(2))));
        Assert.Throws<ArgumentException>(() => LaterAmounts.Of(new LaterAmount(new(2027, 1, 2), Usd(1)), new(new(2027, 1, 1), Usd(2))));
    }

    [Fact]
    public void Equals_SameChanges_IsTrue()
    {
        Assert.Equal(Twice, LaterAmounts.Of([.. Twice.All]));
        Assert.NotEqual(Twice, LaterAmounts.None);
        Assert.Equal(Twice.GetHashCode(), LaterAmounts.Of([.. Twice.All]).GetHashCode());
    }

    // By another way: each day's amount is that of the day before, unless a change is dated on it.
    [Fact]
    public void On_AnyChanges_IsThatOfADiary() => Gen.Select(Gen.Int[0, 60], Gen.Int[0, 500]).Array[0, 6].Sample(changes =>
    {
        LaterAmount[] distinct = [.. changes.DistinctBy(change => change.Item1).OrderBy(change => change.Item1).Select(change => new LaterAmount(new LocalDate(2026, 3, 1).PlusDays(change.Item1), Usd(change.Item2)))];
        LaterAmounts later = LaterAmounts.Of([.. distinct]);
        Money today = Usd(1000);
        for (var day = new LocalDate(2026, 2, 27); day < new LocalDate(2026, 5, 10); day = day.PlusDays(1))
        {
            today = distinct.Where(change => change.From == day).Select(change => change.Amount).DefaultIfEmpty(today).First();
            Assert.Equal(today, later.On(day, Usd(1000)));
        }
    });
}
