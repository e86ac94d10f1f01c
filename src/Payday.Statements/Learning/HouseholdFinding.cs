using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Habits;

namespace Payday.Statements.Learning;

/// <summary>Where statements and a household differ. One of the nested cases.</summary>
/// <param name="Name">The bill or the source, by the household's name where it has one.</param>
public abstract record HouseholdFinding(string Name)
{
    /// <summary>It comes round, and the household hasn't it.</summary>
    /// <param name="Name">The other side's name.</param>
    /// <param name="Series">Its lines.</param>
    public sealed record NotThere(string Name, Recurring Series) : HouseholdFinding(Name);

    /// <summary>The household has it with another amount.</summary>
    /// <param name="Name">The household's name.</param>
    /// <param name="Id">The household's id of it.</param>
    /// <param name="Here">What the household has after the last line.</param>
    /// <param name="Found">What the lines have: the usual amount, of a bill that varies the amount to hold; above zero.</param>
    /// <param name="Series">Its lines.</param>
    public sealed record OtherAmount(string Name, string Id, Money Here, Money Found, Recurring Series) : HouseholdFinding(Name)
    {
        /// <summary>The day since which the lines have it; null where they have had it all along or vary.</summary>
        public LocalDate? Since => Series.Changes.Where(change => change.Kind == RecurringChangeKind.Amount).Select(change => (LocalDate?)change.Since).FirstOrDefault();
    }

    /// <summary>The household has it, and its lines have stopped or were never there.</summary>
    /// <param name="Name">The household's name.</param>
    /// <param name="Last">The last line's day; null where there is none at all.</param>
    public sealed record NoLine(string Name, LocalDate? Last) : HouseholdFinding(Name);
}
