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

    private EndCourse(Money nothing, SortedDictionary<LocalDate, Money> changes)
    {
        this.nothing = nothing;
        days = [.. changes.Keys];
        held = new Money[days.Length];
        Money sum = nothing;
        int at = 0;
        foreach (Money change in changes.Values)
        {
            held[at++] = sum += change;
        }

        least = [.. held];
        for (int i = least.Length - 2; i >= 0; i--)
        {
            least[i] = Money.Min(held[i], least[i + 1]);
        }
    }

    public static EndCourse Of(Ledger ledger, LedgerEnd end) => Without(ledger, end, []);

    /// <summary>The same as if some movements had never been.</summary>
    public static EndCourse Without(Ledger ledger, LedgerEnd end, IReadOnlyCollection<Movement> never)
    {
        var nothing = Money.Zero(ledger.Balances.Currency);
        var changes = new SortedDictionary<LocalDate, Money>();
        foreach (Movement movement in ledger.Of(end))
        {
            Add(movement.Date, movement.To == end ? movement.Amount : -movement.Amount);
        }

        foreach (Movement movement in never.Where(movement => movement.From == end || movement.To == end))
        {
            Add(movement.Date, movement.To == end ? -movement.Amount : movement.Amount);
        }

        return new EndCourse(nothing, changes);

        void Add(LocalDate date, Money amount) => changes[date] = changes.GetValueOrDefault(date, nothing) + amount;
    }

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
