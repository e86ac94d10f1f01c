using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>At least the minimum on every debt that falls due in the period, or did before it and was not covered. Worked out by <see cref="DebtRules"/>.</summary>
/// <param name="Rows">A row for each due date, then the debts that are not due in this period.</param>
/// <param name="Total">What is paid.</param>
public sealed record DebtsStep(ImmutableArray<DebtRow> Rows, Money Total);

/// <summary>A debt at one due date.</summary>
/// <param name="DebtId">The debt.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Due">When the minimum is due, before the period where no payday covered it then; null where none is due.</param>
/// <param name="YearlyRate">A fraction, e.g. 0.1999.</param>
/// <param name="Balance">What is owed before.</param>
/// <param name="Interest">The month's interest; zero where nothing is due.</param>
/// <param name="Minimum">The least that must be paid.</param>
/// <param name="Payment">What is paid.</param>
/// <param name="Changed">Whether the person changed it.</param>
public sealed record DebtRow(
    DebtId DebtId,
    string Name,
    LocalDate? Due,
    decimal YearlyRate,
    Money Balance,
    Money Interest,
    Money Minimum,
    Money Payment,
    bool Changed)
{
    /// <summary>What the minimum is known by, or null where none is due.</summary>
    public DueKey? Key { get; init; }

    /// <summary>What is owed after.</summary>
    public Money NewBalance => Balance + Interest - Payment;
}
