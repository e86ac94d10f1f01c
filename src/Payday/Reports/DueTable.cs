using System.Collections.Immutable;
using NodaTime;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What falls due, by day, for reports and home alike.</summary>
internal static class DueTable
{
    /// <summary>The columns.</summary>
    /// <param name="until">Up to which day, in words.</param>
    public static ImmutableArray<TextColumn> Columns(string until) => [Report.Names($"Due until {until}"), new("on"), Report.Amounts("amount"), new("")];

    /// <summary>The cells of a due.</summary>
    /// <param name="name">Whose it is.</param>
    /// <param name="date">Its day.</param>
    /// <param name="amount">Its amount, written.</param>
    /// <param name="state">What is said of it, in a word or two.</param>
    public static ImmutableArray<string> Cells(string name, LocalDate date, string amount, string state) => [name, DateText.Weekday(date), amount, state];
}
