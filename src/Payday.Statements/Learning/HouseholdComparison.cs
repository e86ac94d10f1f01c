using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Statements.Habits;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Learning;

/// <summary>Holds what statements teach against a household's bills and incomes.</summary>
/// <remarks>A bill and a series are one where each is the other's best partner by words, amount and days; a doubtful pair says nothing.</remarks>
public static class HouseholdComparison
{
    private const int Shared = 100;
    private const int EachWord = 10;
    private const int SameAmount = 60;
    private const int SameDays = 50;
    private const int Enough = 100;

    // A series belongs to a schedule where that many of its lines in a hundred lie on its days.
    private const int MostOnDays = 75;
    private const int DaysOff = 4;

    // What should have come that often, and never did, isn't paid from this account.
    private const int MissingTimes = 2;

    /// <summary>The differences: bills, then incomes.</summary>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public static ImmutableArray<HouseholdFinding> Of(Lessons lessons, Household household)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        ArgumentNullException.ThrowIfNull(household);
        if (lessons.Currency != household.Currency)
        {
            throw new ArgumentException("The statements are in another currency than the household.", nameof(lessons));
        }

        var holidays = household.Holidays;
        Known[] bills = [.. household.Bills.Select(bill => new Known(bill.Id.Text, bill.Name, bill.AmountOn, bill.Schedule, bill.Shift, bill.Until))];
        Known[] sources = [.. household.Sources.Select(source => new Known(source.Id.Text, source.Name, source.ExpectedOn, source.Schedule, source.Shift, source.Until))];
        Known[] debts = [.. household.Debts.Select(debt => new Known(debt.Id.Text, debt.Name, _ => Money.Zero(household.Currency), debt.Schedule, Shift.None, null))];
        return [.. Of(lessons, lessons.Bills, bills, debts, holidays), .. Of(lessons, lessons.Incomes, sources, [], holidays)];
    }

    private static IEnumerable<HouseholdFinding> Of(Lessons lessons, ImmutableArray<Recurring> series, Known[] known, Known[] others, BankHolidays holidays)
    {
        Known[] all = [.. known, .. others];
        int[,] points = new int[series.Length, all.Length];
        for (int i = 0; i < series.Length; i++)
        {
            for (int j = 0; j < all.Length; j++)
            {
                points[i, j] = Points(series[i], all[j], holidays);
            }
        }

        // Whatever shares words with a bill speaks of it, also where it isn't sure which line is its own.
        var met = Enumerable.Range(0, all.Length).Where(j => Enumerable.Range(0, series.Length).Any(i => points[i, j] >= Enough)).ToHashSet();
        for (int i = 0; i < series.Length; i++)
        {
            int[] row = [.. Enumerable.Range(0, all.Length).Select(j => points[i, j])];
            int best = row.DefaultIfEmpty(0).Max();
            if (best < Enough)
            {
                // On the days of a bill that no line is known of it may be just that one, under another name.
                if (row.Index().All(one => one.Item == 0 || (one.Item == SameDays && met.Contains(one.Index))) && !HasStopped(series[i]))
                {
                    yield return new HouseholdFinding.NotThere(series[i].Name, series[i]);
                }

                continue;
            }

            int partner = Array.IndexOf(row, best);
            bool isSure = row.Count(one => one == best) == 1 && Enumerable.Range(0, series.Length).All(other => other == i || points[other, partner] < best);
            if (isSure && partner < known.Length && Difference(series[i], all[partner]) is { } finding)
            {
                yield return finding;
            }
        }

        for (int j = 0; j < known.Length; j++)
        {
            if (!met.Contains(j) && IsMissing(lessons, known[j], holidays))
            {
                yield return new HouseholdFinding.NoLine(known[j].Name, null);
            }
        }
    }

    private static HouseholdFinding? Difference(Recurring series, Known here)
    {
        if (series.Changes.FirstOrDefault(change => change.Kind == RecurringChangeKind.Stopped) is { } stopped)
        {
            return new HouseholdFinding.NoLine(here.Name, stopped.Since);
        }

        // What it is after the last line: a change that the household has planned already is none.
        Money amount = here.AmountOn(series.Last.PlusDays(1));
        Money usual = series.UsualSize;
        Money hold = series.HoldSize;
        bool isWithin = amount >= Money.Min(usual, hold) && amount <= Money.Max(Money.Max(usual, hold), series.Lines.Select(line => Size(line.Amount)).Max());
        return (usual == hold ? amount == usual : isWithin) || amount.IsZero
            ? null
            : new HouseholdFinding.OtherAmount(here.Name, here.Id, amount, series.IsIncome ? usual : hold, series);
    }

    private static int Points(Recurring series, Known known, BankHolidays holidays)
    {
        List<string> words = LineWords.Of(known.Name);
        int shared = words.Count(word => series.Lines.Count(line => LineWords.Of(line.Party, line.Text).Contains(word)) * 2 > series.Lines.Length);
        return (shared > 0 ? Shared + (EachWord * shared) : 0)
            + (known.AmountOn(series.Last) is var amount && (series.UsualSize == amount || series.HoldSize == amount) ? SameAmount : 0)
            + (IsOnDays(series, known, holidays) ? SameDays : 0);
    }

    private static bool IsOnDays(Recurring series, Known known, BankHolidays holidays)
    {
        LocalDate[] days = [.. Occurrences.Between(known.Schedule, known.Shift, holidays, series.First.PlusDays(-DaysOff), series.Last.PlusDays(DaysOff)).Select(day => day.Date)];
        int on = series.Lines.Count(line => Array.Exists(days, day => Math.Abs(Period.DaysBetween(day, line.Date)) <= DaysOff));
        return on * 100 >= MostOnDays * series.Lines.Length && days.Length * MostOnDays <= series.Expected * 100;
    }

    private static bool IsMissing(Lessons lessons, Known known, BankHolidays holidays)
    {
        List<string> words = LineWords.Of(known.Name);
        bool isSaid = lessons.Histories.SelectMany(history => history.Lines)
            .Any(line => (words.Count > 0 && LineWords.Of(line.Party, line.Text).Exists(words.Contains)) || Size(line.Amount) == known.AmountOn(line.Date));
        return !isSaid && Occurrences.Between(known.Schedule, known.Shift, holidays, lessons.Span.Start, lessons.Span.End, known.Until).Length >= MissingTimes;
    }

    private static bool HasStopped(Recurring series) => series.Changes.Any(change => change.Kind == RecurringChangeKind.Stopped);

    private static Money Size(Money amount) => amount.IsNegative ? -amount : amount;

    private sealed record Known(string Id, string Name, Func<LocalDate, Money> AmountOn, Schedule Schedule, Shift Shift, LocalDate? Until);
}
