using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class SetAsidePartsTests
{
    private static readonly LocalDate Next = Friday6March.PlusDays(7);

    [Theory]
    [InlineData(0, 150, "0/100, 0/50, 0/0")]
    [InlineData(120, 30, "100/0, 20/30, 0/0")]
    [InlineData(150, 40, "100/0, 50/0, 0/40")]
    [InlineData(200, -30, "100/0, 50/0, 50/-30")]
    [InlineData(60, 200, "60/40, 0/50, 0/110")]
    [InlineData(10, 20, "10/20, 0/0, 0/0")]
    public void Of_TwoDues_HeldComesFirstAndAllOfItIsShownOnce(decimal held, decimal setAside, string parts)
    {
        BillsStep step = Step(held, setAside);

        var shown = SetAsideParts.Of(step);

        SetAsidePart[] all = [.. step.Dues.OrderBy(due => due.Date).Select(due => shown.For(due.Key)), shown.Later(new BillId("rent"))];
        Assert.Equal(parts, string.Join(", ", all.Select(part => $"{part.Held.MinorUnits / 100}/{part.SetAside.MinorUnits / 100}")));
        Assert.Equal((Usd(held), Usd(setAside)), (Sum(all.Select(part => part.Held)), Sum(all.Select(part => part.SetAside))));
    }

    private static BillsStep Step(decimal held, decimal setAside) => new(
        [Due(Next, 50), Due(Friday6March, 100)],
        [new SetAsideLine(new BillId("rent"), "Rent", Usd(held), Usd(setAside), null, Usd(0))],
        SetAsideMode.Level,
        Usd(held),
        Usd(setAside),
        Usd(setAside),
        []);

    private static DueRow Due(LocalDate date, decimal amount) => new(new DueKey(new BillId("rent"), date), date, "Rent", true, Usd(amount), Usd(amount), false, false);

    private static Money Sum(IEnumerable<Money> amounts) => Money.Sum(amounts, Dollars);
}
