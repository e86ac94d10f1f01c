using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Pots;

public class UnpayableTests
{
    private static readonly Obligation Card = new("Card", new(2026, 3, 7), Usd(35), ObligationKind.Minimum);
    private static readonly Obligation Phone = new("Phone", new(2026, 3, 8), Usd(40), ObligationKind.Bill);
    private static readonly Obligation Rent = new("Rent", new(2026, 3, 15), Usd(800), ObligationKind.EssentialBill);
    private static readonly Obligation Power = new("Power", new(2026, 3, 9), Usd(60), ObligationKind.EssentialBill);

    // Shelter and utilities before all else: common practice, no source.
    [Theory]
    [InlineData(935, "")]
    [InlineData(2000, "")]
    [InlineData(930, "Card 5.00")]
    [InlineData(890, "Phone 10.00, Card 35.00")]
    [InlineData(100, "Rent 760.00, Phone 40.00, Card 35.00")]
    [InlineData(0, "Power 60.00, Rent 800.00, Phone 40.00, Card 35.00")]
    [InlineData(-20, "Power 60.00, Rent 800.00, Phone 40.00, Card 35.00")]
    public void Find_MoneyLacks_NamesTheLeastImportantFirstToGo(decimal available, string expected) =>
        Assert.Equal(
            expected,
            string.Join(", ", Unpayable.Find([Card, Phone, Rent, Power], Usd(available))
                .Select(unpayable => $"{unpayable.Obligation.Name} {unpayable.Short.ToPlain()}")));

    [Fact]
    public void Find_AnyObligations_LackWhatTheyNeedBeyondTheMoney() =>
        Gen.Select(Gen.Select(Gen.Int[0, 5_000], Gen.Enum<ObligationKind>(), Gen.Int[1, 28]).Array[0, 8], Gen.Int[0, 20_000])
            .Sample((all, available) =>
            {
                Obligation[] obligations =
                    [.. all.Select(o => new Obligation("", new LocalDate(2026, 3, o.Item3), Cents(o.Item1), o.Item2))];
                var unpayable = Unpayable.Find(obligations, Cents(available));
                Money needed = Money.Sum(obligations.Select(o => o.Amount), Dollars);
                return Money.Sum(unpayable.Select(u => u.Short), Dollars) == (needed - Cents(available)).ClampToZero()
                    && unpayable.All(u => u.Short.IsPositive && u.Short <= u.Obligation.Amount);
            });
}
