using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Ids;
using Payday.Core.Routines;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.Routines;

public class GivenSetAsideTests
{
    private static readonly LocalDate Next = Friday6March.PlusDays(30);

    // Rent, due sooner, gets most of what the insurance, due later, gives up.
    [Theory]
    [InlineData(-115, 200, 10, "insurance 115 to Rent")]
    [InlineData(-115, 20, 30, "insurance 115 to Phones")]
    [InlineData(-115, -5, 0, "insurance 115 to , rent 5 to ")]
    [InlineData(115, 20, 30, "")]
    [InlineData(0, 20, 30, "")]
    public void Of_BillsThatGive_NamesWhoNeedsIt(int insurance, int rent, int phones, string given)
    {
        var step = new BillsStep(
            [],
            [Line("insurance", "Insurance", insurance, Next.PlusDays(60)), Line("rent", "Rent", rent, Next), Line("phones", "Phones", phones, Next.PlusDays(3)), Line("late", "Late", 500, Next.PlusDays(90))],
            SetAsideMode.Level, Usd(0), Usd(0), Usd(0), []);

        Assert.Equal(given, string.Join(", ", GivenSetAside.Of(step).Select(one => $"{one.Line.BillId.Text} {one.Amount.MinorUnits / 100} to {one.To}")));
    }

    private static SetAsideLine Line(string id, string name, int setAside, LocalDate next) => new(new BillId(id), name, Usd(150), Usd(setAside), next, Usd(200));
}
