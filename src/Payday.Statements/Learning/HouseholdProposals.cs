using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Households;
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
            .. lessons.Incomes.Where(GoesOn).Select(series => Source(series, names.Next("source", series.Name))),
            .. lessons.Bills.Where(GoesOn).Select(series => Bill(series, names.Next("bill", series.Name))),
            .. lessons.Habits.Where(habit => habit.IsUsual && habit.Name != HabitFinder.Nameless).Select(habit => Pot(habit, names.Next("pot", habit.Name), smallestNote)),
            .. Account(lessons, today),
        ];
    }

    /// <summary>The proposals for a household that is there: bills and incomes that it hasn't, and new amounts of those that it has.</summary>
    /// <param name="lessons">What statements teach.</param>
    /// <param name="household">The household, in the same currency.</param>
    /// <remarks>A change that the household has planned for later is left alone.</remarks>
    public static ImmutableArray<ProposedItem> Beside(Lessons lessons, Household household)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        ArgumentNullException.ThrowIfNull(household);
        var names = new NameRow();
        names.Take("source", household.Sources.Select(source => (source.Name, source.Id.Text)));
        names.Take("bill", household.Bills.Select(bill => (bill.Name, bill.Id.Text)));
        ImmutableArray<HouseholdFinding> findings = HouseholdComparison.Of(lessons, household);
        return
        [
            .. findings.OfType<HouseholdFinding.OtherAmount>().Where(other => !IsPlanned(household, other)).Select(other => new ProposedItem.NewAmount(
                other.Name, other.Id, other.Here.ToDecimal(), other.Found.ToDecimal(), LocalDate.Max(other.Series.Last.PlusDays(1), household.Start), other.Series)),
            .. findings.OfType<HouseholdFinding.NotThere>().Select(found => found.Series).Where(GoesOn).Select(series => series.IsIncome
                ? (ProposedItem)Source(series, names.Next("source", series.Name))
                : Bill(series, names.Next("bill", series.Name))),
        ];
    }

    private static bool IsPlanned(Household household, HouseholdFinding.OtherAmount other) => other.Series.IsIncome
        ? household.Sources.Any(source => source.Id.Text == other.Id && source.Later.All.Any(change => change.From > other.Series.Last))
        : household.Bills.Any(bill => bill.Id.Text == other.Id && bill.Later.All.Any(change => change.From > other.Series.Last));

    private static bool GoesOn(Recurring series) => series.Changes.All(change => change.Kind != RecurringChangeKind.Stopped);

    private static ProposedItem.Source Source(Recurring series, (string Name, string Id) called) => new(
        new()
        {
            Id = called.Id,
            Name = called.Name,
            Expected = series.Usual.ToDecimal(),
            Schedule = ScheduleDraft.Of(series.Rhythm.ToSchedule()),
            Shift = ShiftGuess.Of(series, Shift.Before),
        },
        series);

    private static ProposedItem.Bill Bill(Recurring series, (string Name, string Id) called) => new(
        new()
        {
            Id = called.Id,
            Name = called.Name,
            Amount = series.HoldSize.ToDecimal(),
            Schedule = ScheduleDraft.Of(series.Rhythm.ToSchedule()),
            Shift = ShiftGuess.Of(series, Shift.None),
            Essential = true,
        },
        series,
        DebtWords.AreIn(series.Lines));

    private static ProposedItem.Pot Pot(Habit habit, (string Name, string Id) called, decimal smallestNote)
    {
        Money median = (habit.IsWeekly ? habit.PerWeek : habit.PerMonth)!.Median;
        return new(
            new()
            {
                Id = called.Id,
                Name = called.Name,
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

    // Two of one company are told apart by a number behind the name, as a person can change it; the id stays whatever the name becomes.
    private sealed class NameRow
    {
        private readonly HashSet<string> names = new(StringComparer.OrdinalIgnoreCase);
        private readonly Dictionary<string, HashSet<string>> ids = new(StringComparer.Ordinal);

        public void Take(string kind, IEnumerable<(string Name, string Id)> there)
        {
            (string Name, string Id)[] all = [.. there];
            names.UnionWith(all.Select(one => $"{kind} {one.Name}"));
            ids[kind] = [.. all.Select(one => one.Id)];
        }

        public (string Name, string Id) Next(string kind, string name)
        {
            string next = name;
            for (int number = 2; !names.Add($"{kind} {next}"); number++)
            {
                string behind = string.Create(CultureInfo.InvariantCulture, $" {number}");
                next = name[..Math.Min(name.Length, HouseholdLimits.LongestName - behind.Length)] + behind;
            }

            if (!ids.TryGetValue(kind, out HashSet<string>? taken))
            {
                taken = new HashSet<string>(StringComparer.Ordinal);
                ids[kind] = taken;
            }

            return (next, ItemId.From(next, kind, taken));
        }
    }
}
