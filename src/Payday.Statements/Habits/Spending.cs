using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Habits;

/// <summary>What is usually spent on something in a week or a month.</summary>
public static class Spending
{
    private const int FewestPeriods = 3;
    private const int LowPercent = 20;
    private const int HighPercent = 80;

    /// <summary>By week, Monday to Sunday.</summary>
    /// <param name="lines">The lines with what each was spent on. Refunds lower what was spent.</param>
    /// <param name="from">The first day the lines are complete for.</param>
    /// <param name="to">The last day the lines are complete for.</param>
    /// <returns>By label; none where fewer than three weeks are whole.</returns>
    public static ImmutableArray<SpendingSummary> ByWeek(IEnumerable<(string Label, StatementLine Line)> lines, LocalDate from, LocalDate to)
    {
        LocalDate first = from.DayOfWeek == IsoDayOfWeek.Monday ? from : from.Next(IsoDayOfWeek.Monday);
        int weeks = Math.Max(0, (Period.DaysBetween(first, to) + 1) / 7);
        return Of(lines, weeks, date => date < first ? -1 : Period.DaysBetween(first, date) / 7);
    }

    /// <summary>By calendar month.</summary>
    /// <inheritdoc cref="ByWeek"/>
    public static ImmutableArray<SpendingSummary> ByMonth(IEnumerable<(string Label, StatementLine Line)> lines, LocalDate from, LocalDate to)
    {
        LocalDate first = from.Day == 1 ? from : from.PlusMonths(1).PlusDays(1 - from.PlusMonths(1).Day);
        LocalDate end = to.PlusDays(1);
        int months = Math.Max(0, (12 * (end.Year - first.Year)) + end.Month - first.Month);
        return Of(lines, months, date => (12 * (date.Year - first.Year)) + date.Month - first.Month);
    }

    private static ImmutableArray<SpendingSummary> Of(IEnumerable<(string Label, StatementLine Line)> lines, int periods, Func<LocalDate, int> periodOf)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (periods < FewestPeriods)
        {
            return [];
        }

        var summaries = ImmutableArray.CreateBuilder<SpendingSummary>();
        foreach (IGrouping<string, StatementLine> label in lines.GroupBy(pair => pair.Label, pair => pair.Line, StringComparer.Ordinal).OrderBy(label => label.Key, StringComparer.Ordinal))
        {
            Currency currency = label.First().Amount.Currency;
            long[] spent = new long[periods];
            foreach (StatementLine line in label.Where(line => line.Amount.Currency == currency && periodOf(line.Date) >= 0 && periodOf(line.Date) < periods))
            {
                spent[periodOf(line.Date)] -= line.Amount.MinorUnits;
            }

            Money At(int percent) => Money.FromMinorUnits(Quantiles.Of(spent, percent), currency);
            summaries.Add(new SpendingSummary(label.Key, At(50), At(LowPercent), At(HighPercent), periods));
        }

        return summaries.ToImmutable();
    }
}
