using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Histories;

/// <summary>Months and years of a household, by the dates of the movements that stand: an undo leaves no trace in any of them.</summary>
public sealed class MonthFlows
{
    private readonly ImmutableArray<MonthFlow> months;
    private readonly YearMonth firstWhole;
    private readonly Currency currency;

    private MonthFlows(ImmutableArray<MonthFlow> months, YearMonth firstWhole, Currency currency) => (this.months, this.firstWhole, this.currency) = (months, firstWhole, currency);

    /// <summary>The month in which the household began.</summary>
    public YearMonth First => months[0].Month;

    /// <summary>The last month that a movement is in.</summary>
    public YearMonth Last => months[^1].Month;

    /// <summary>The months of a book; worked out once for each.</summary>
    public static MonthFlows Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Remembered(static of =>
        {
            HashSet<PotId> reaching = [.. of.Household.Pots.Where(pot => pot.Kind is not PotKind.Spending).Select(pot => pot.Id)];
            return Of(of.Ledger, of.Household.Start, reaching.Contains);
        });
    }

    /// <summary>The months of a ledger, in one pass over it.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="start">When the household began; a month begun amid is no whole one.</param>
    /// <param name="saves">Whether a pot has something to reach, so that what is in it is saved.</param>
    public static MonthFlows Of(Ledger ledger, LocalDate start, Func<PotId, bool> saves)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        ArgumentNullException.ThrowIfNull(saves);
        Currency currency = ledger.Balances.Currency;
        YearMonth begun = start.ToYearMonth();
        var sums = new SortedDictionary<YearMonth, MonthSum> { [begun] = new(currency) };
        foreach (MovedAmount movement in ledger.Moved)
        {
            YearMonth month = movement.Date.ToYearMonth();
            if (!sums.TryGetValue(month, out MonthSum? sum))
            {
                sums.Add(month, sum = new(currency));
            }

            sum.Take(movement, saves);
        }

        var months = ImmutableArray.CreateBuilder<MonthFlow>();
        Money saved = Money.Zero(currency);
        Money owed = saved;
        Flow none = Flow.None(currency);
        foreach ((YearMonth month, MonthSum sum) in sums)
        {
            while (months.Count > 0 && months[^1].Month.PlusMonths(1) < month)
            {
                months.Add(new MonthFlow(months[^1].Month.PlusMonths(1), none, saved, owed));
            }

            months.Add(new MonthFlow(month, sum.Flow, saved += sum.Saved, owed += sum.Owed));
        }

        return new MonthFlows(months.ToImmutable(), start.Day == 1 ? begun : begun.PlusMonths(1), currency);
    }

    /// <summary>A month; one without movements has nothing come in and gone out, and stands as the one before it ended.</summary>
    public MonthFlow At(YearMonth month)
    {
        Money nothing = Money.Zero(currency);
        int at = Between(First, month);
        return at < 0 ? new MonthFlow(month, Flow.None(currency), nothing, nothing)
            : at < months.Length ? months[at]
            : months[^1] with { Month = month, Flow = Flow.None(currency) };
    }

    /// <summary>The months from one to another, both among them; none before the household began.</summary>
    public ImmutableArray<MonthFlow> Between(YearMonth from, LocalDate to)
    {
        YearMonth first = from < First ? First : from;
        return [.. Enumerable.Range(0, Math.Max(0, Between(first, to.ToYearMonth()) + 1)).Select(i => At(first.PlusMonths(i)))];
    }

    /// <summary>What came in and went out from January to a month of the same year.</summary>
    public Flow YearTo(YearMonth month) => Enumerable.Range(1, month.Month)
        .Select(number => At(new YearMonth(month.Year, number)).Flow)
        .Aggregate(Flow.None(currency), (sum, flow) => sum + flow);

    /// <summary>What usually goes somewhere in a month: by the whole months before it, from the first that anything went there.</summary>
    /// <returns>Null where those are too few.</returns>
    public Usual? UsualTo(LedgerEnd end, YearMonth month)
    {
        int first = months.TakeWhile(one => !one.Flow.Where.ContainsKey(end)).Count();
        return first == months.Length ? null : UsualOf(flow => flow.To(end), months[first].Month, month);
    }

    /// <summary>What usually comes in, or goes out, in a month: by the whole months before it.</summary>
    /// <param name="amount">Which amount.</param>
    /// <param name="month">The month.</param>
    /// <returns>Null where those are too few.</returns>
    public Usual? UsualOf(Func<Flow, Money> amount, YearMonth month) => UsualOf(amount, First, month);

    private Usual? UsualOf(Func<Flow, Money> amount, YearMonth from, YearMonth month)
    {
        YearMonth first = from < firstWhole ? firstWhole : from;
        return Usual.Of([.. Enumerable.Range(0, Math.Max(0, Between(first, month))).TakeLast(Usual.Most).Select(i => amount(At(first.PlusMonths(i)).Flow))]);
    }

    private static int Between(YearMonth from, YearMonth to) => ((to.Year - from.Year) * 12) + to.Month - from.Month;
}
