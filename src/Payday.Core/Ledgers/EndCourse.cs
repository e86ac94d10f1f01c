using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>What one end of the ledger held day by day, in whatever order its movements were entered.</summary>
/// <remarks>Summed once as it is made: it is asked for each fill of a life, and a life has thousands of days.</remarks>
internal sealed class EndCourse
{
    private readonly Money nothing;

    // By how much it changed on which day, the days in their order, each once.
    private readonly List<(LocalDate Day, long By)> changes;

    // At the end of each of the days, and the least from there on. All of them in minor units.
    private readonly long[] held;
    private readonly long[] least;

    private EndCourse(Money nothing, List<(LocalDate Day, long By)> changes)
    {
        this.nothing = nothing;
        this.changes = changes;
        held = new long[changes.Count];
        long sum = 0;
        for (int i = 0; i < held.Length; i++)
        {
            held[i] = checked(sum += changes[i].By);
        }

        least = [.. held];
        for (int i = least.Length - 2; i >= 0; i--)
        {
            least[i] = Math.Min(held[i], least[i + 1]);
        }
    }

    /// <summary>Of an end that never held anything.</summary>
    public static EndCourse Nothing(Currency currency) => new(Money.Zero(currency), []);

    /// <summary>Of an end by what changed it.</summary>
    /// <param name="currency">Its currency.</param>
    /// <param name="changes">By how much each of its movements changed it, and when, in the order of the ledger.</param>
    public static EndCourse Of(Currency currency, IEnumerable<(LocalDate Day, long By)> changes)
    {
        var all = new List<(LocalDate Day, long By)>();
        foreach ((LocalDate day, long by) in changes)
        {
            Add(all, day, by);
        }

        return new EndCourse(Money.Zero(currency), all);
    }

    /// <summary>Of an end as its movements stand.</summary>
    public static EndCourse Of(Ledger ledger, LedgerEnd end) => ledger.CourseOf(end);

    /// <summary>The same once further movements are written.</summary>
    public static EndCourse With(Ledger ledger, LedgerEnd end, IReadOnlyCollection<Movement> more) => Of(ledger, end).With(end, more);

    /// <summary>The same as if some movements had never been.</summary>
    public static EndCourse Without(Ledger ledger, LedgerEnd end, IReadOnlyCollection<Movement> never) => Of(ledger, end).Changed(end, never, isUndone: true);

    /// <summary>The course with further movements.</summary>
    /// <param name="end">The end that it is of.</param>
    /// <param name="more">Movements, of other ends too.</param>
    public EndCourse With(LedgerEnd end, IEnumerable<Movement> more) => Changed(end, more, isUndone: false);

    /// <summary>What it held at the end of a day.</summary>
    public Money On(LocalDate date) => FirstAfter(date) is > 0 and var after ? Worth(held[after - 1]) : nothing;

    /// <summary>The least that it held at the end of a day or any later one: what can be taken out on that day.</summary>
    public Money LeastFrom(LocalDate date) => FirstAfter(date) is > 0 and var after ? Worth(least[after - 1])
        : least is [var ever, ..] ? Worth(Math.Min(0, ever))
        : nothing;

    /// <summary>The first day, not before the one given, on which an amount can be taken out; null where it never can.</summary>
    public LocalDate? DayFor(Money amount, LocalDate from) => LeastFrom(from) >= amount
        ? from
        : changes.Select(change => change.Day).Where(day => day > from).Select(day => (LocalDate?)day).FirstOrDefault(day => LeastFrom(day!.Value) >= amount);

    private EndCourse Changed(LedgerEnd end, IEnumerable<Movement> movements, bool isUndone)
    {
        var changed = new List<(LocalDate Day, long By)>(changes.Count + (movements.TryGetNonEnumeratedCount(out int count) ? count : 0));
        changed.AddRange(changes);
        foreach (Movement movement in movements)
        {
            if (movement.To == end)
            {
                Add(changed, movement.Date, Change(movement, isUndone));
            }
            else if (movement.From == end)
            {
                Add(changed, movement.Date, Change(movement, !isUndone));
            }
        }

        return new EndCourse(nothing, changed);
    }

    // Another currency is refused, as amounts do.
    private long Change(Movement movement, bool isLess) => (isLess ? nothing - movement.Amount : nothing + movement.Amount).MinorUnits;

    private Money Worth(long minorUnits) => Money.FromMinorUnits(minorUnits, nothing.Currency);

    // Most are written in the order of their days, and what is late belongs near the end.
    private static void Add(List<(LocalDate Day, long By)> changes, LocalDate day, long by)
    {
        int at = changes.Count;
        while (at > 0 && changes[at - 1].Day > day)
        {
            at--;
        }

        if (at > 0 && changes[at - 1].Day == day)
        {
            changes[at - 1] = (day, checked(changes[at - 1].By + by));
        }
        else
        {
            changes.Insert(at, (day, by));
        }
    }

    // The index of the first day after a date; how many there are where none is.
    private int FirstAfter(LocalDate date)
    {
        int low = 0;
        int high = changes.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = changes[middle].Day <= date ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
