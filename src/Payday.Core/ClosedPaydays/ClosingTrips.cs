using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>The trips to a machine that a routine's withdrawal needs.</summary>
internal static class ClosingTrips
{
    /// <summary>What each fetches, in their order; none where one is enough, and at a teller.</summary>
    public static ImmutableArray<Money> Of(RoutinePlan plan) =>
        plan.Draft.BankFor(plan.Book.Household.Settings.Bank) is CashSource.Machine { Limit: { } limit }
        && MachineTrips.Of(plan.Withdrawal.Plan.Withdraw, limit) is { Length: > 1 } trips
            ? [.. trips.Select(trip => trip.Worth(plan.Withdrawal.Plan.Currency))]
            : [];
}
