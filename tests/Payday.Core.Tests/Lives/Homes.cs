using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Lives;

/// <summary>Small households of our own invention, as tests write them.</summary>
internal static class Homes
{
    public static LocalDate Friday6March { get; } = new(2026, 3, 6);

    /// <summary>One fortnightly wage of 1,000 from 6 March 2026, 500 in the account, which its buffer keeps, and nothing else.</summary>
    public static Household Bare { get; } = new(
        "Test house",
        Friday6March,
        new HouseholdSettings(
            Dollars,
            NumberStyle.CommaPoint,
            new CashPieces([Usd(50), Usd(20), Usd(10), Usd(5)], []),
            IsoDayOfWeek.Friday,
            HolidayRules.None,
            SetAsideMode.Level,
            new CashSource.Teller(),
            CardRounding.Up,
            DebtOrder.SmallestBalance,
            []) { BufferKeeps = Usd(1_000_000) },
        [new IncomeSource(new SourceId("wage"), "Wage", new Schedule.EveryWeeks(2, Friday6March), Shift.None, Usd(1000))],
        [],
        [],
        [],
        new OpeningBalances(Usd(500), BillSums(), PotSums(), Notes.None));

    public static Bill Bill(string name, decimal amount, LocalDate first, int months = 1, bool essential = false) =>
        new(new BillId(name.ToLowerInvariant()), name, Usd(amount), new Schedule.EveryMonths(months, first), Shift.None, essential);

    public static Debt Debt(string name, decimal balance, decimal rate, decimal minimum, int due) =>
        new(new DebtId(name.ToLowerInvariant()), name, Usd(balance), rate, new MinimumRule.Fixed(Usd(minimum)), new MonthDay.Numbered(due));

    public static Pot CashPot(string name, decimal aWeek, int rank = 1, decimal floor = 0) =>
        new(new PotId(name.ToLowerInvariant()), name, Place.Cash, rank, Usd(floor), new PotKind.Spending(Usd(aWeek), FillPer.Week), NoteWishes.None);

    public static Pot AccountPot(string name, decimal aPayday, int rank = 1, decimal floor = 0) =>
        new(new PotId(name.ToLowerInvariant()), name, Place.Account, rank, Usd(floor), new PotKind.Spending(Usd(aPayday), FillPer.Payday), NoteWishes.None);

    public static ImmutableSortedDictionary<string, Money> Sums(params (string Id, decimal Amount)[] sums) =>
        sums.ToImmutableSortedDictionary(sum => sum.Id, sum => Usd(sum.Amount), StringComparer.Ordinal);

    public static ImmutableSortedDictionary<PotId, Money> PotSums(params (string Id, decimal Amount)[] sums) =>
        sums.ToImmutableSortedDictionary(sum => new PotId(sum.Id), sum => Usd(sum.Amount));

    public static ImmutableSortedDictionary<BillId, Money> BillSums(params (string Id, decimal Amount)[] sums) =>
        sums.ToImmutableSortedDictionary(sum => new BillId(sum.Id), sum => Usd(sum.Amount));

    public static ImmutableSortedDictionary<DebtId, Money> DebtSums(params (string Id, decimal Amount)[] sums) =>
        sums.ToImmutableSortedDictionary(sum => new DebtId(sum.Id), sum => Usd(sum.Amount));

    public static ImmutableSortedDictionary<SourceId, Money> SourceSums(params (string Id, decimal Amount)[] sums) =>
        sums.ToImmutableSortedDictionary(sum => new SourceId(sum.Id), sum => Usd(sum.Amount));
}
