using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Statements.Habits;

namespace Payday.Statements.Learning;

/// <summary>Makes items of a household of what statements teach, for a person to take, change or leave one by one.</summary>
public static class HouseholdProposals
{
    /// <summary>The proposals: incomes, bills, pots, then what is in the account.</summary>
    /// <param name="lessons">What statements teach.</param>
    /// <param name="smallestNote">The smallest note in use, in whole units: what a pot gets is whole ones of it, rounded up.</param>
    /// <param name="today">No household begins after it.</param>
    /// <remarks>
    /// A series that stopped is none any more. A bill gets the amount to hold, an income its usual amount, a pot the median week
    /// where something is spent in half the weeks, else the median month.
    /// </remarks>
    public static ImmutableArray<ProposedItem> Of(Lessons lessons, decimal smallestNote, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        var names = new NameRow();
        return
        [
            .. lessons.Incomes.Where(GoesOn).Select(series => Source(series, names.Next("income", series.Name))),
            .. lessons.Bills.Where(GoesOn).Select(series => Bill(series, names.Next("bill", series.Name))),
            .. lessons.Habits.Where(habit => habit.IsUsual && habit.Name != HabitFinder.Nameless).Select(habit => Pot(habit, names.Next("pot", habit.Name), smallestNote)),
            .. Account(lessons, today),
        ];
    }

    private static bool GoesOn(Recurring series) => series.Changes.All(change => change.Kind != RecurringChangeKind.Stopped);

    private static ProposedItem.Source Source(Recurring series, string name) => new(
        new()
        {
            Name = name,
            Expected = series.Usual.ToDecimal(),
            Schedule = ScheduleDraft.Of(series.Rhythm.ToSchedule()),
            Shift = ShiftGuess.Of(series, Shift.Before),
        },
        series);

    private static ProposedItem.Bill Bill(Recurring series, string name) => new(
        new()
        {
            Name = name,
            Amount = series.HoldSize.ToDecimal(),
            Schedule = ScheduleDraft.Of(series.Rhythm.ToSchedule()),
            Shift = ShiftGuess.Of(series, Shift.None),
            Essential = true,
        },
        series,
        DebtWords.AreIn(series.Lines));

    private static ProposedItem.Pot Pot(Habit habit, string name, decimal smallestNote)
    {
        Money median = (habit.IsWeekly ? habit.PerWeek : habit.PerMonth)!.Median;
        return new(
            new()
            {
                Name = name,
                Kind = PotUse.Spending,
                Per = habit.IsWeekly ? FillPer.Week : FillPer.Month,
                Amount = decimal.Ceiling(median.ToDecimal() / smallestNote) * smallestNote,
                Place = Place.Cash,
            },
            habit);
    }

    // Of several accounts the balances are one sum only where they are of one day.
    private static IEnumerable<ProposedItem> Account(Lessons lessons, LocalDate today)
    {
        AccountHistory[] accounts = [.. lessons.Histories.Where(history => !history.IsCard)];
        AccountHistory[] closed = accounts.All(history => history.ClosedOn is not null && history.ClosedOn == accounts[0].ClosedOn) ? accounts : [.. accounts.Take(1)];
        if (closed is [{ ClosedOn: { } on }, ..])
        {
            yield return new ProposedItem.Account(
                Money.Sum(closed.Select(history => history.Closing!.Amount), lessons.Currency).ToDecimal(), on, LocalDate.Min(on.PlusDays(1), today));
        }
    }

    // Two of one company are told apart by a number behind the name, as a person can change it.
    private sealed class NameRow
    {
        private readonly HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);

        public string Next(string kind, string name)
        {
            string next = name;
            for (int number = 2; !taken.Add($"{kind} {next}"); number++)
            {
                string behind = string.Create(CultureInfo.InvariantCulture, $" {number}");
                next = name[..Math.Min(name.Length, HouseholdLimits.LongestName - behind.Length)] + behind;
            }

            return next;
        }
    }
}
