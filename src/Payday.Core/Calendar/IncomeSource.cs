using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Calendar;

/// <summary>Who pays the household, and when.</summary>
/// <param name="Id">Stable name that the ledger refers to.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Schedule">When it pays.</param>
/// <param name="Shift">Where a payday on a weekend or bank holiday moves.</param>
/// <param name="Expected">What usually comes before it first changes, zero or more; zero where it can't be foreseen.</param>
/// <param name="Until">The last date on which it pays, or null.</param>
public sealed record IncomeSource(
    SourceId Id,
    string Name,
    Schedule Schedule,
    Shift Shift,
    Money Expected,
    LocalDate? Until = null)
{
    /// <summary>What <see cref="Expected"/> changes to, each from a date on.</summary>
    public LaterAmounts Later { get; init; } = LaterAmounts.None;

    /// <summary>What usually comes on a date.</summary>
    /// <param name="scheduled">The date that the schedule gives, before any move off a weekend.</param>
    public Money ExpectedOn(LocalDate scheduled) => Later.On(scheduled, Expected);
}
