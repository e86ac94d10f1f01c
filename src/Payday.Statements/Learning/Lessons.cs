using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Habits;

namespace Payday.Statements.Learning;

/// <summary>What statements teach of a household's habits. All of it are proposals.</summary>
/// <param name="Currency">The currency of all amounts; accounts in another one are left out.</param>
/// <param name="Histories">The accounts, the one with the most lines first.</param>
/// <param name="Span">The days that all of it is about.</param>
public sealed record Lessons(Currency Currency, ImmutableArray<AccountHistory> Histories, DateInterval Span)
{
    /// <summary>The least days that habits show in: three months, less what a file without a period of its own doesn't say of its first and last days.</summary>
    public const int FewestDays = 80;

    /// <summary>The most months that are looked at, the latest: what was before says little of today.</summary>
    public const int MostMonths = 24;

    /// <summary>Whether the statements cover less than about three months: then nothing is said of habits.</summary>
    public bool IsTooShort => Span.Length < FewestDays;

    /// <summary>Whether lines from before the last 24 months were left out.</summary>
    public bool LeavesOut { get; init; }

    /// <summary>How many lines are looked at, what moves between the accounts not counted.</summary>
    public int Lines { get; init; }

    /// <summary>How many lines only move money between the accounts.</summary>
    public int Transfers { get; init; }

    /// <summary>Accounts of another currency, which are left out.</summary>
    public ImmutableArray<Currency> OtherCurrencies { get; init; } = [];

    /// <summary>Incomes that come round, the largest first.</summary>
    public ImmutableArray<Recurring> Incomes { get; init; } = [];

    /// <summary>Bills that come round, the largest first.</summary>
    public ImmutableArray<Recurring> Bills { get; init; } = [];

    /// <summary>What is spent beside them, the largest first.</summary>
    public ImmutableArray<Habit> Habits { get; init; } = [];

    /// <summary>A week of all that is spent beside bills; null where fewer than three weeks are whole.</summary>
    public SpendingSummary? Week { get; init; }

    /// <summary>A month of all that is spent beside bills; null where fewer than three months are whole.</summary>
    public SpendingSummary? Month { get; init; }

    /// <summary>What came in and went out in each whole month, the earliest first.</summary>
    public ImmutableArray<MonthFlow> Months { get; init; } = [];
}
