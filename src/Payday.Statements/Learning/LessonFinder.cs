using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Habits;
using Payday.Statements.Lines;

namespace Payday.Statements.Learning;

/// <summary>Finds what statements teach.</summary>
public static class LessonFinder
{
    private const string All = "all";

    /// <summary>Looks at statements of any accounts, in any order.</summary>
    /// <param name="statements">The statements; overlaps and repeats count once.</param>
    /// <param name="currency">The household's currency; null takes that of the account with the most lines.</param>
    /// <param name="potOf">The pot that a line was spent from, where that is known; else null.</param>
    /// <returns>What they teach; null where there is no line in the currency.</returns>
    public static Lessons? Of(IEnumerable<Statement> statements, Currency? currency = null, Func<StatementLine, string?>? potOf = null)
    {
        ImmutableArray<AccountHistory> all = AccountHistory.Of(statements);
        if (all.IsEmpty)
        {
            return null;
        }

        Currency wanted = currency ?? all[0].Currency;
        ImmutableArray<AccountHistory> histories = [.. all.Where(history => history.Currency == wanted)];
        if (histories.IsEmpty)
        {
            return null;
        }

        DateInterval span = SpanOf(histories);
        ImmutableArray<AccountHistory> seen = [.. histories.Select(history => history with { Lines = [.. history.Lines.Where(line => line.Date >= span.Start)] })];
        ImmutableArray<AccountHistory> spent = OwnTransfers.TakenOut(seen);
        var lessons = new Lessons(wanted, histories, span)
        {
            LeavesOut = seen.Sum(history => history.Lines.Length) < histories.Sum(history => history.Lines.Length),
            Lines = spent.Sum(history => history.Lines.Length),
            Transfers = seen.Sum(history => history.Lines.Length) - spent.Sum(history => history.Lines.Length),
            OtherCurrencies = [.. all.Select(history => history.Currency).Where(other => other != wanted).Distinct()],
        };
        return lessons.IsTooShort ? lessons : Taught(lessons, spent, potOf ?? (_ => null));
    }

    // Habits are of days for which all accounts are read; of accounts that hardly meet the one with the most lines counts.
    private static DateInterval SpanOf(ImmutableArray<AccountHistory> histories)
    {
        LocalDate from = histories.Max(history => history.From);
        LocalDate to = histories.Min(history => history.To);
        if (to < from.PlusDays(Lessons.FewestDays - 1))
        {
            (from, to) = (histories[0].From, histories[0].To);
        }

        return new DateInterval(LocalDate.Max(from, to.PlusMonths(-Lessons.MostMonths).PlusDays(1)), to);
    }

    private static Lessons Taught(Lessons lessons, ImmutableArray<AccountHistory> histories, Func<StatementLine, string?> potOf)
    {
        Recurring[] series =
        [
            .. histories.SelectMany(history => RecurringFinder.Find(history.Lines, history.To).Where(one => !(history.IsCard && one.IsIncome)))
                .OrderByDescending(one => Math.Abs(one.Usual.MinorUnits))
                .Select(one => one with { Name = PartyName.Of(one.Lines) is { Length: > 0 } name ? name : HabitFinder.Nameless }),
        ];
        var taken = series.SelectMany(one => one.Lines).ToHashSet(ReferenceEqualityComparer.Instance);
        StatementLine[] inSpan = [.. histories.SelectMany(history => history.Lines).Where(line => lessons.Span.Contains(line.Date))];
        StatementLine[] rest = [.. inSpan.Where(line => !taken.Contains(line) && line.Kind != LineKind.Interest)];
        ImmutableArray<Habit> habits = HabitFinder.Of(rest, lessons.Span, potOf);
        (string, StatementLine)[] together = [.. habits.SelectMany(habit => habit.Lines).Select(line => (All, line))];
        return lessons with
        {
            Incomes = [.. series.Where(one => one.IsIncome)],
            Bills = [.. series.Where(one => !one.IsIncome)],
            Habits = habits,
            Week = Spending.ByWeek(together, lessons.Span.Start, lessons.Span.End).FirstOrDefault(),
            Month = Spending.ByMonth(together, lessons.Span.Start, lessons.Span.End).FirstOrDefault(),
            Months = [.. Flows(inSpan, lessons.Span, lessons.Currency)],
        };
    }

    private static IEnumerable<MonthFlow> Flows(IReadOnlyCollection<StatementLine> lines, DateInterval span, Currency currency)
    {
        ILookup<YearMonth, Money> amounts = lines.ToLookup(line => line.Date.ToYearMonth(), line => line.Amount);
        for (YearMonth month = span.Start.ToYearMonth(); month <= span.End.ToYearMonth(); month = month.PlusMonths(1))
        {
            DateInterval days = month.ToDateInterval();
            if (span.Contains(days))
            {
                yield return new MonthFlow(
                    month,
                    Money.Sum(amounts[month].Where(amount => amount.IsPositive), currency),
                    -Money.Sum(amounts[month].Where(amount => amount.IsNegative), currency));
            }
        }
    }
}
