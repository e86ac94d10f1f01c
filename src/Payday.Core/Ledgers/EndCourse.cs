using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>What one end of the ledger held day by day, in whatever order its movements were entered.</summary>
/// <remarks>Summed once as it is made: it is asked for each fill of a life, and a life has thousands of days.</remarks>
internal sealed class EndCourse
{
    private readonly Money nothing;
    private readonly LocalDate[] days;

    // At the end of each of the days, and the least from there on.
    private readonly Money[] held;
    private readonly Money[] least;

    /// <param name="nothing">Zero.</param>
    /// <param name="changes">By how much it changed on which day, the days in their order, each once.</param>
    private EndCourse(Money nothing, List<(LocalDate Day, Money By)> changes)
    {
        this.nothing = nothing;
        days = new LocalDate[changes.Count];
        held = new Money[days.Length];
        Money sum = nothing;
        for (int i = 0; i < days.Length; i++)
        {
            days[i] = changes[i].Day;
            held[i] = sum += changes[i].By;
        }

        least = [.. held];
        for (int i = least.Length - 2; i >= 0; i--)
        {
            least[i] = Money.Min(held[i], least[i + 1]);
        }
    }

    public static EndCourse Of(Ledger ledger, LedgerEnd end) => Of(ledger, end, more: [], never: []);

    /// <summary>The same once further movements are written.</summary>
    public static EndCourse With(Ledger ledger, LedgerEnd end, IReadOnlyCollection<Movement> more) => Of(ledger, end, more, never: []);

    /// <summary>The same as if some movements had never been.</summary>
    public static EndCourse Without(Ledger ledger, LedgerEnd end, IReadOnlyCollection<Movement> never) => Of(ledger, end, more: [], never);

    private static EndCourse Of(Ledger ledger, LedgerEnd end, IReadOnlyCollection<Movement> more, IReadOnlyCollection<Movement> never)
    {
        IReadOnlyList<Movement> written = ledger.Of(end);
        var changes = new List<(LocalDate Day, Money By)>(written.Count + more.Count);
        bool inOrder = true;
        Take(written, comes: true);
        Take(more, comes: true);
        Take(never, comes: false);
        return new EndCourse(Money.Zero(ledger.Balances.Currency), inOrder ? changes : InOrder(changes));

        void Take(IEnumerable<Movement> movements, bool comes)
        {
            foreach (Movement movement in movements)
            {
                if (movement.To == end)
                {
                    Add(movement.Date, comes ? movement.Amount : -movement.Amount);
                }
                else if (movement.From == end)
                {
                    Add(movement.Date, comes ? -movement.Amount : movement.Amount);
                }
            }
        }

        // Most are written in the order of their days.
        void Add(LocalDate day, Money by)
        {
            if (changes is [.., var last] && last.Day == day)
            {
                changes[^1] = (day, last.By + by);
                return;
            }

            inOrder = inOrder && (changes.Count == 0 || changes[^1].Day < day);
            changes.Add((day, by));
        }
    }

    private static List<(LocalDate Day, Money By)> InOrder(List<(LocalDate Day, Money By)> changes) =>
        [.. changes.GroupBy(change => change.Day).Select(day => (day.Key, day.Select(change => change.By).Aggregate((sum, by) => sum + by))).OrderBy(day => day.Key)];

    /// <summary>What it held at the end of a day.</summary>
    public Money On(LocalDate date) => LastBy(date) is >= 0 and var at ? held[at] : nothing;

    /// <summary>The least that it held at the end of a day or any later one: what can be taken out on that day.</summary>
    public Money LeastFrom(LocalDate date) => LastBy(date) is >= 0 and var at ? least[at]
        : least is [var ever, ..] ? Money.Min(nothing, ever)
        : nothing;

    /// <summary>The first day, not before the one given, on which an amount can be taken out; null where it never can.</summary>
    public LocalDate? DayFor(Money amount, LocalDate from) => LeastFrom(from) >= amount
        ? from
        : days.Where(day => day > from).Select(day => (LocalDate?)day).FirstOrDefault(day => LeastFrom(day!.Value) >= amount);

    // The index of the last day that isn't after a date; -1 where all are.
    private int LastBy(LocalDate date)
    {
        int found = Array.BinarySearch(days, date);
        return found >= 0 ? found : ~found - 1;
    }
}
