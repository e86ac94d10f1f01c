using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Ids;

namespace Payday.Core.Bills;

/// <summary>An obligation with due dates.</summary>
/// <param name="Id">Stable name that the ledger refers to.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Amount">What is usually due before it first changes, zero or more; the actual amount is confirmed each time.</param>
/// <param name="Schedule">When it falls due.</param>
/// <param name="Shift">Where a due date on a weekend or bank holiday moves.</param>
/// <param name="Essential">
/// Whether it keeps the household going: shelter and utilities come before all else
/// (common practice, no source).
/// </param>
/// <param name="Until">The last date on which it falls due, or null.</param>
public sealed record Bill(
    BillId Id,
    string Name,
    Money Amount,
    Schedule Schedule,
    Shift Shift,
    bool Essential,
    LocalDate? Until = null)
{
    /// <summary>What <see cref="Amount"/> changes to, each from a date on.</summary>
    public LaterAmounts Later { get; init; } = LaterAmounts.None;

    /// <summary>What is usually due on a date.</summary>
    /// <param name="scheduled">The date that the schedule gives, before any move off a weekend.</param>
    public Money AmountOn(LocalDate scheduled) => Later.On(scheduled, Amount);
}
