using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>A debt as it stands on a day.</summary>
/// <param name="Id">Stable name; no two of a list are the same.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Balance">What is owed. Zero or less is a debt that is paid.</param>
/// <param name="YearlyRate">A fraction, e.g. 0.1999 for 19.99 % a year; 0 to 10.</param>
/// <param name="Minimum">The least that must be paid each month.</param>
public sealed record DebtState(DebtId Id, string Name, Money Balance, decimal YearlyRate, MinimumRule Minimum)
{
    /// <summary>The largest yearly rate taken, 1,000 %.</summary>
    public const decimal HighestRate = 10m;

    /// <summary>What is paid on it at once, before the first interest: zero to the balance. Null for nothing.</summary>
    public Money? PaidAtOnce { get; init; }

    /// <summary>For how many of the first months its interest is charged and its minimum covered already, zero or more.</summary>
    public int MonthsCovered { get; init; }

    /// <summary>When its minimum is due, where that isn't once a month; null where it is.</summary>
    public Schedule? Schedule { get; init; }

    /// <summary>The day up to which its due dates are covered and its interest is charged, where it has a schedule; null where none are.</summary>
    public LocalDate? CoveredTo { get; init; }

    /// <summary>Minimums that are paid already, each after one that isn't: its month asks for it no more.</summary>
    public ImmutableArray<PaidAhead> PaidAhead { get; init; } = [];

    /// <summary>What a month asks of it.</summary>
    internal DebtMonth In(YearMonth month)
    {
        Money? early = PaidAhead.Any(paid => paid.Due.ToYearMonth() == month)
            ? Money.Sum(PaidAhead.Where(paid => paid.Due.ToYearMonth() == month).Select(paid => paid.Amount), Balance.Currency)
            : null;
        if (Schedule is null)
        {
            return new DebtMonth(early is null ? 1 : 0, IsCharged: false) { PaidEarly = early };
        }

        // A month's due dates don't depend on bank holidays, but for a last working day, of which each month has one.
        return new DebtMonth(
            InterestDays.DuesIn(Schedule, BankHolidays.None, month).Count(due => !(due.Scheduled <= CoveredTo) && !PaidAhead.Any(paid => paid.Due == due.Scheduled)),
            InterestDays.In(Schedule, BankHolidays.None, month) <= CoveredTo) { PaidEarly = early };
    }
}
