using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;

namespace Payday.Core.DuePayments;

/// <summary>A due, or a part of one, that has left the account or was freed.</summary>
/// <param name="Key">What it is known by.</param>
/// <param name="Name">What the person calls the bill or the debt.</param>
/// <param name="Date">The day on which it fell or falls due, moves done.</param>
/// <param name="PaidOn">The day that was said for it; of one that a payday wrote as paid that payday.</param>
/// <param name="Amount">How much; zero where it was freed.</param>
/// <param name="Number">The number of its payment; null where a payday wrote it.</param>
public sealed record PaidDue(DueKey Key, string Name, LocalDate Date, LocalDate PaidOn, Money Amount, long? Number)
{
    /// <summary>Whether the due is done with, though less than it came to was paid.</summary>
    public bool IsFreed { get; init; }

    /// <summary>Whether a part of the due, this one or an earlier one, was paid.</summary>
    public bool IsPaidInPart { get; init; }
}
