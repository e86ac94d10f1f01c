using System.Collections.Concurrent;
using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Calendar;

/// <summary>The paydays of some sources by some holiday rules, each worked out once: <see cref="PayCalendar"/>, remembered.</summary>
/// <remarks>
/// The same sources and rules always have the same paydays, so nothing of it can become stale. A routine asks for the same
/// spans of dates for each of its pots and bills, and an outlook for each of its paydays. Any number of threads may ask at once.
/// </remarks>
public sealed class KnownPaydays
{
    // What is asked for lies within a life of the household; a longer span is worked out each time.
    private const int MostYears = 150;

    private readonly ImmutableArray<IncomeSource> sources;
    private readonly Dictionary<SourceId, IncomeSource> byId;
    private readonly ConcurrentDictionary<YearMonth, MonthPaydays> months = new();
    private Span? span;

    /// <param name="sources">Who pays, in household order.</param>
    /// <param name="rules">The bank holidays.</param>
    public KnownPaydays(ImmutableArray<IncomeSource> sources, HolidayRules rules)
    {
        this.sources = sources;
        Holidays = BankHolidays.From(rules);
        byId = [];
        foreach (IncomeSource source in sources)
        {
            byId.TryAdd(source.Id, source);
        }
    }

    /// <summary>The days on which the bank is closed.</summary>
    public BankHolidays Holidays { get; }

    /// <summary>The paydays in a window, as <see cref="PayCalendar.Paydays"/> has them.</summary>
    /// <param name="from">The first date of the window.</param>
    /// <param name="to">The last date of the window; before <paramref name="from"/> there are no paydays.</param>
    public ImmutableArray<ScheduledPayday> Between(LocalDate from, LocalDate to)
    {
        if (to < from)
        {
            return [];
        }

        Span before = span ?? new Span(from, to, PayCalendar.Paydays(sources, Holidays, from, to));
        LocalDate first = LocalDate.Min(before.First, from);
        LocalDate last = LocalDate.Max(before.Last, to);
        if (last.Year - first.Year > MostYears)
        {
            return PayCalendar.Paydays(sources, Holidays, from, to);
        }

        // Which are extra doesn't depend on where a window begins, so what is known only grows at its ends.
        Span known = before.First == first && before.Last == last
            ? before
            : new Span(
                first,
                last,
                [
                    .. first < before.First ? PayCalendar.Paydays(sources, Holidays, first, before.First.PlusDays(-1)) : [],
                    .. before.Paydays,
                    .. last > before.Last ? PayCalendar.Paydays(sources, Holidays, before.Last.PlusDays(1), last) : [],
                ]);
        span = known;
        int begin = known.FirstFrom(from);
        int end = to == known.Last ? known.Paydays.Length : known.FirstFrom(to.PlusDays(1));
        return known.Paydays.Slice(begin, end - begin);
    }

    /// <summary>The first payday after a date, or null where no source pays any more.</summary>
    public ScheduledPayday? Next(LocalDate after) => after.Year >= LocalDate.MaxIsoValue.Year - MostYears
        ? PayCalendar.Next(sources, Holidays, after)
        : Between(after.PlusDays(1), after.PlusMonths(1)) is [var soon, ..] ? soon : PayCalendar.Next(sources, Holidays, after);

    /// <summary>The paydays that carry what is needed in a calendar month, as <see cref="PayCalendar.OfMonth"/> has them.</summary>
    public MonthPaydays OfMonth(YearMonth month) => months.GetOrAdd(month, static (month, known) => PayCalendar.OfMonth(known.sources, known.Holidays, month), this);

    /// <summary>The calendar months that a payday carries a part of, as <see cref="PayCalendar.MonthsOf(IEnumerable{IncomeSource}, BankHolidays, LocalDate)"/> has them.</summary>
    public ImmutableArray<MonthPaydays> MonthsOf(LocalDate payday) => PayCalendar.MonthsOf(OfMonth, payday);

    /// <summary>What all sources together are expected to pay on a payday.</summary>
    /// <exception cref="OverflowException">It leaves the range of 64 bits.</exception>
    public Money Expected(ScheduledPayday payday, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(payday);
        return Money.Sum(payday.Pays.Where(pay => byId.ContainsKey(pay.SourceId)).Select(pay => byId[pay.SourceId].ExpectedOn(pay.Scheduled)), currency);
    }

    private sealed record Span(LocalDate First, LocalDate Last, ImmutableArray<ScheduledPayday> Paydays)
    {
        /// <summary>The index of the first payday that isn't before a date.</summary>
        public int FirstFrom(LocalDate date)
        {
            int low = 0;
            int high = Paydays.Length;
            while (low < high)
            {
                int middle = (low + high) / 2;
                (low, high) = Paydays[middle].Date < date ? (middle + 1, high) : (low, middle);
            }

            return low;
        }
    }
}
