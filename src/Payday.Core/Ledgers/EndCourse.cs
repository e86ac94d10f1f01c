using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>What one end of the ledger held day by day, in whatever order its movements were entered.</summary>
internal sealed class EndCourse
{
    private readonly Money nothing;
    private readonly SortedDictionary<LocalDate, Money> changes = [];

    private EndCourse(Money nothing) => this.nothing = nothing;

    public static EndCourse Of(Ledger ledger, LedgerEnd end)
    {
        var course = new EndCourse(Money.Zero(ledger.Balances.Currency));
        foreach (Movement movement in ledger.Of(end))
        {
            course.Add(movement.Date, movement.To == end ? movement.Amount : -movement.Amount);
        }

        return course;
    }

    /// <summary>The same as if some movements had never been.</summary>
    public static EndCourse Without(Ledger ledger, LedgerEnd end, IReadOnlyCollection<Movement> never)
    {
        EndCourse course = Of(ledger, end);
        foreach (Movement movement in never.Where(movement => movement.From == end || movement.To == end))
        {
            course.Add(movement.Date, movement.To == end ? -movement.Amount : movement.Amount);
        }

        return course;
    }

    /// <summary>What it held at the end of a day.</summary>
    public Money On(LocalDate date) => changes.TakeWhile(change => change.Key <= date).Aggregate(nothing, (sum, change) => sum + change.Value);

    /// <summary>The least that it held at the end of a day or any later one: what can be taken out on that day.</summary>
    public Money LeastFrom(LocalDate date)
    {
        Money sum = On(date);
        Money least = sum;
        foreach (Money change in changes.Where(change => change.Key > date).Select(change => change.Value))
        {
            sum += change;
            least = Money.Min(least, sum);
        }

        return least;
    }

    /// <summary>The first day, not before the one given, on which an amount can be taken out; null where it never can.</summary>
    public LocalDate? DayFor(Money amount, LocalDate from) => LeastFrom(from) >= amount
        ? from
        : changes.Keys.Where(day => day > from).Select(day => (LocalDate?)day).FirstOrDefault(day => LeastFrom(day!.Value) >= amount);

    private void Add(LocalDate date, Money amount) => changes[date] = changes.GetValueOrDefault(date, nothing) + amount;
}
