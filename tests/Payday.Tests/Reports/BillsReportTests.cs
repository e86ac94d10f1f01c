using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;
using Payday.Core.Routines;
using Payday.Reports;

namespace Payday.Tests.Reports;

/// <summary>The sentence of a bill that gives up money which was set aside for it.</summary>
public class BillsReportTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");
    private static readonly LocalDate Next = new(2026, 4, 5);

    [Theory]
    [InlineData(-115.32, 200, "Car insurance gives up 115.32 today: Rent, due sooner, needs it, and it has until 4 Jun to come back.")]
    [InlineData(-115.32, -5, "Car insurance gives up 115.32 today: it isn't needed there now.|Rent gives up 5.00 today: it isn't needed there now.")]
    [InlineData(115.32, 200, "")]
    public void Given_SaysWhatForAndUntilWhen(double insurance, double rent, string said)
    {
        var bills = new BillsStep(
            [], [Line("insurance", "Car insurance", insurance, Next.PlusDays(60)), Line("rent", "Rent", rent, Next)], SetAsideMode.Level, Of(0), Of(0), Of(0), []);

        Assert.Equal(said, string.Join('|', BillsReport.Given(bills, NumberStyle.CommaPoint)));
        Assert.Equal(said.Split('|')[0], BillsReport.Given(bills, new BillId("insurance"), NumberStyle.CommaPoint));
    }

    private static SetAsideLine Line(string id, string name, double setAside, LocalDate next) => new(new BillId(id), name, Of(150), Of(setAside), next, Of(200));

    private static Money Of(double amount) => Money.FromMinorUnits((long)Math.Round(amount * 100), Usd);
}
