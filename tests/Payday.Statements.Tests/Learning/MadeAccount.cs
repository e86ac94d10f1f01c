using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Learning;

/// <summary>Lines and statements put together by hand; all names are invented.</summary>
internal static class MadeAccount
{
    public static LocalDate Day(string date) => LocalDatePattern.Iso.Parse(date).Value;

    public static Money Euros(decimal amount) => Money.FromMinorUnits((long)(amount * 100), MadeStatements.Euro);

    public static StatementLine Line(string date, decimal amount, string party, LineKind kind = LineKind.Other) =>
        new(Day(date), Euros(amount)) { Party = party, Kind = kind };

    /// <summary>A line in each of some months of 2026.</summary>
    public static IEnumerable<StatementLine> Monthly(int months, int day, decimal amount, string party, LineKind kind = LineKind.Other) =>
        Enumerable.Range(1, months).Select(month => Line("2026-01-01", amount, party, kind) with { Date = new LocalDate(2026, month, Math.Min(day, 28)) });

    public static Statement Of(string account, string from, string to, params IEnumerable<StatementLine> lines) => new(StatementFormat.Camt053, MadeStatements.Euro)
    {
        Account = account,
        From = Day(from),
        To = Day(to),
        Lines = [.. lines.OrderBy(line => line.Date)],
    };

    public static Statement Closing(this Statement statement, decimal amount) =>
        statement with { Closing = new Balance(Euros(amount), statement.To, 0) };

    /// <summary>Half a year of a household: a wage, rent, internet that went up, a locker that was given up, food, coffee and cash.</summary>
    public static ImmutableArray<StatementLine> HalfYear() =>
    [
        .. Monthly(6, 25, 1840.50m, "Tidewater Works", LineKind.Pay),
        .. Monthly(6, 1, -640m, "NORTHLANE RENT 0042", LineKind.StandingOrder),
        .. Monthly(4, 12, -30m, "Farnet Internet", LineKind.DirectDebit),
        .. Enumerable.Range(5, 2).Select(month => Line("2026-01-12", -34m, "Farnet Internet", LineKind.DirectDebit) with { Date = new LocalDate(2026, month, 12) }),
        .. Monthly(4, 3, -42m, "Storage Locker", LineKind.StandingOrder),
        .. Enumerable.Range(0, 25).Select(week => Line("2026-01-02", -38m - (week % 7), "Corner Grocer", LineKind.Card) with { Date = new LocalDate(2026, 1, 2).PlusDays((7 * week) + (week % 3)) }),
        .. Enumerable.Range(0, 12).Select(time => Line("2026-01-09", -100m, "Machine 7", LineKind.Cash) with { Date = new LocalDate(2026, 1, 9).PlusDays(14 * time) }),
        Line("2026-03-17", -219m, "Lamp Yard", LineKind.Card),
    ];

    public static Statement HalfYearStatement() => Of("FI1", "2026-01-01", "2026-06-30", HalfYear()).Closing(712.40m);
}
