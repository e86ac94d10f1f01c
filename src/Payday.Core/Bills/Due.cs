using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Bills;

/// <summary>One time that a bill has to be paid.</summary>
/// <param name="BillId">The bill.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Date">The date by which it must be paid, shifts done.</param>
/// <param name="Amount">What is due, zero or more.</param>
public sealed record Due(BillId BillId, string Name, LocalDate Date, Money Amount)
{
    /// <summary>The date by the schedule alone.</summary>
    public LocalDate Scheduled { get; init; } = Date;

    /// <summary>What it is known by.</summary>
    public DueKey Key => new(BillId, Scheduled);
}
