using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Histories;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Histories;

/// <summary>Months and years: what came in, what went out and where to.</summary>
public sealed class MonthFlowsTests
{
    private static readonly LedgerEnd Left = LedgerEnd.InAccount(Purpose.LeftToPlace);
    private static readonly LedgerEnd Food = LedgerEnd.InCash(Purpose.Pot(new PotId("food")));
    private static readonly LedgerEnd Trip = LedgerEnd.InAccount(Purpose.Pot(new PotId("trip")));
    private static readonly LedgerEnd FoodSpent = LedgerEnd.SpentFrom(new PotId("food"));
    private static readonly LedgerEnd Rent = LedgerEnd.PaidFor(new BillId("rent"));
    private static readonly LedgerEnd Card = new LedgerEnd.Owed(new DebtId("card"));
    private static readonly LedgerEnd ForCard = LedgerEnd.InAccount(Purpose.ForCard(new DebtId("card")));
    private static readonly LedgerEnd Pay = LedgerEnd.PaidBy(new SourceId("pay"));
    private static readonly LedgerEnd Fee = LedgerEnd.Entered(EntryKind.Fee);
    private static readonly LedgerEnd Gift = LedgerEnd.Entered(EntryKind.Gift);
    private static readonly YearMonth May = new(2026, 5);

    /// <summary>A movement: where from, where to, what came in and went out, where it went and how much (null: nowhere), what more is saved and owed.</summary>
    public static TheoryData<string, LedgerEnd, LedgerEnd, int, int, LedgerEnd?, int, int, int> Kinds => new()
    {
        { "pay", Pay, Left, 10, 0, null, 0, 0, 0 },
        { "pay taken back", Left, Pay, -10, 0, null, 0, 0, 0 },
        { "a gift that comes", Gift, Left, 10, 0, null, 0, 0, 0 },
        { "a gift that goes", Left, Gift, 0, 10, Gift, 10, 0, 0 },
        { "a fee", LedgerEnd.InAccount(Purpose.Buffer), Fee, 0, 10, Fee, 10, -10, 0 },
        { "rent", LedgerEnd.InAccount(Purpose.SetAside(new BillId("rent"))), Rent, 0, 10, Rent, 10, 0, 0 },
        { "spent in cash", Food, FoodSpent, 0, 10, FoodSpent, 10, 0, 0 },
        { "missing at a count", Food, LedgerEnd.MissedIn(new PotId("food")), 0, 10, FoodSpent, 10, 0, 0 },
        { "turned up again", LedgerEnd.MissedIn(new PotId("food")), Food, 0, -10, FoodSpent, -10, 0, 0 },
        { "a fill", Left, Food, 0, 0, null, 0, 0, 0 },
        { "a fill of a pot with a target", Left, Trip, 0, 0, null, 0, 10, 0 },
        { "to the buffer", Left, LedgerEnd.InAccount(Purpose.Buffer), 0, 0, null, 0, 10, 0 },
        { "a payment on a debt", Left, Card, 0, 10, Card, 10, 0, -10 },
        { "interest", Card, LedgerEnd.InterestOn(new DebtId("card")), 0, 0, null, 0, 0, 10 },
        { "a fee on a debt", Card, Fee, 0, 0, null, 0, 0, 10 },
        { "bought with a card that is a debt", Card, FoodSpent, 0, 0, FoodSpent, 10, 0, 10 },
        { "money for that", Food, ForCard, 0, 0, null, 0, 0, 0 },
        { "that is paid", ForCard, Card, 0, 10, null, 0, 0, -10 },
        { "borrowed", Card, Left, 10, 0, null, 0, 0, 10 },
        { "the opening", LedgerEnd.Opening, Left, 0, 0, null, 0, 0, 0 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Of_AMovement_CountsForWhatItIs(string what, LedgerEnd from, LedgerEnd to, int cameIn, int wentOut, LedgerEnd? where, int went, int saved, int owed)
    {
        MonthFlow month = Months(new(2026, 5, 1), At(new(2026, 5, 9), from, to, 10)).At(May);

        Assert.True((Usd(cameIn), Usd(wentOut), Usd(saved), Usd(owed)) == (month.Flow.CameIn, month.Flow.WentOut, month.Saved, month.Owed), $"{what}: {month}");
        Assert.Equal(Usd(what switch { "missing at a count" => 10, "turned up again" => -10, _ => 0 }), month.Flow.Missing);
        Assert.Equal(where is null ? [] : [KeyValuePair.Create(where, Usd(went))], month.Flow.Where);
    }

    [Fact]
    public void At_MonthsWithoutMovements_StandAsTheOneBefore()
    {
        MonthFlows months = Months(new(2026, 1, 20), At(new(2026, 1, 20), Left, Trip, 70), At(new(2026, 4, 2), Trip, Left, 20));

        Assert.Equal([0, 70, 70, 70, 50, 50], new[] { -1, 0, 1, 2, 3, 9 }.Select(later => (int)(months.At(new YearMonth(2026, 1).PlusMonths(later)).Saved.MinorUnits / 100)));
        Assert.Equal((new YearMonth(2026, 1), new YearMonth(2026, 4)), (months.First, months.Last));
        Assert.Equal(5, months.Between(new YearMonth(2025, 6), new LocalDate(2026, 5, 31)).Length);
    }

    [Theory]
    [InlineData("10 20", null)]
    [InlineData("30 10 20", 20)]
    [InlineData("40 30 20 10", 20)]
    [InlineData("0 0 0 0 0 600", 0)]
    [InlineData("900 900 900 900 900 900 900 1 1 1 1 1 1 1 1 1 1 1 1", 1)]
    public void Usual_OfSomeMonths_IsTheirLowerMedian(string before, int? usual)
    {
        Money[] amounts = [.. before.Split(' ').Select(amount => Usd(int.Parse(amount, System.Globalization.CultureInfo.InvariantCulture)))];

        Assert.Equal(usual is { } amount ? new Usual(Usd(amount), Math.Min(12, amounts.Length)) : null, Usual.Of(amounts));
    }

    // The household began amid January; food is first bought in February; the month itself doesn't count.
    [Theory]
    [InlineData(20, 4, null)]
    [InlineData(20, 5, 3)]
    [InlineData(20, 7, 5)]
    [InlineData(1, 5, 3)]
    public void UsualTo_APot_CountsWholeMonthsSinceItBegan(int startDay, int month, int? counted)
    {
        Movement[] bought = [.. Enumerable.Range(2, 5).Select(number => At(new(2026, number, 3), Food, FoodSpent, number * 10))];
        MonthFlows months = Months(new(2026, 1, startDay), bought);

        Assert.Equal(counted, months.UsualTo(FoodSpent, new YearMonth(2026, month))?.Months);
        Assert.Null(months.UsualTo(Rent, new YearMonth(2026, month)));
        Assert.Equal(startDay == 1 ? 4 : 3, months.UsualOf(flow => flow.WentOut, May)?.Months);
    }

    [Fact]
    public void Of_AnyLife_MonthsAddUpToTheYearAndToWhatAccountAndCashGrewBy() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[20, 120]).Sample(
        (seed, days) =>
        {
            var life = new FiveYears(Book.Begin(House), seed);
            LocalDate today = Friday6March.PlusDays(-1);
            for (int day = 0; day < days; day++, today = today.PlusDays(1))
            {
                life.Live(today, _ => { });
            }

            Ledger ledger = life.Book.Ledger;
            MonthFlows months = MonthFlows.Of(life.Book);
            Money nothing = Money.Zero(House.Currency);
            for (YearMonth month = months.First; month <= months.Last; month = month.PlusMonths(1))
            {
                Flow flow = months.At(month).Flow;
                Money grew = Money.Sum(ledger.Standing.Where(movement => movement.Date.ToYearMonth() == month).Select(Growth), House.Currency);
                Assert.Equal(grew, flow.CameIn - flow.WentOut + flow.Opened);
                Assert.Equal(months.Between(new YearMonth(month.Year, 1), month.OnDayOfMonth(1)).Aggregate(nothing, (sum, one) => sum + one.Flow.WentOut), months.YearTo(month).WentOut);
            }

            // By other ways: the balances as they are, and each end's own movements.
            Flow year = months.YearTo(months.Last);
            Assert.Equal(Money.Sum(ledger.Balances.All.Where(pair => pair.Key is LedgerEnd.At).Select(pair => pair.Value), House.Currency), year.CameIn - year.WentOut + year.Opened);
            Assert.Equal(-Money.Sum(ledger.Balances.All.Where(pair => pair.Key is LedgerEnd.Owed).Select(pair => pair.Value), House.Currency), months.At(months.Last).Owed);
            Money byCard = Money.Sum(ledger.Standing.Select(OnCard), House.Currency);
            Assert.Equal(year.WentOut + byCard, Money.Sum(year.Where.Values, House.Currency));
        },
        iter: 20);

    private static Money Growth(Movement movement) =>
        (movement.To is LedgerEnd.At ? movement.Amount : Usd(0)) - (movement.From is LedgerEnd.At ? movement.Amount : Usd(0));

    private static Money OnCard(Movement movement) => (movement.From, movement.To) switch
    {
        (LedgerEnd.Owed, LedgerEnd.Outside { Kind: OutsideKind.Spending }) => movement.Amount,
        (LedgerEnd.Outside { Kind: OutsideKind.Spending }, LedgerEnd.Owed) => -movement.Amount,
        (LedgerEnd.At { Purpose.Kind: PurposeKind.ForCard }, LedgerEnd.Owed) => -movement.Amount,
        _ => Usd(0),
    };

    private static Movement At(LocalDate date, LedgerEnd from, LedgerEnd to, int amount) => new(0, date, from, to, Usd(amount), "");

    private static MonthFlows Months(LocalDate start, params Movement[] movements) => MonthFlows.Of(
        Ledger.Of(House.Currency, [.. movements.Select((movement, i) => movement with { Number = i + 1 })]), start, pot => pot.Text == "trip");
}
