using System.Collections.Immutable;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>What is written down of a routine once it is closed.</summary>
public static class ClosingRecord
{
    /// <summary>The record of a routine as it stands.</summary>
    /// <param name="plan">The routine.</param>
    /// <param name="first">The number of its first movement.</param>
    /// <param name="last">The number of its last movement.</param>
    public static ClosedPayday Of(RoutinePlan plan, long first, long last)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(
            plan.Period,
            first,
            last,
            [.. plan.Bills.Dues.Select(due => new ClosedDue(due.Key, due.Amount, due.Paid, due.IsDecided))],
            [.. plan.Withdrawal.Pots.SelectMany(row => row.Weeks.Select(week => new ClosedPart(row.Pot.Id, week.Week, week.Notes)))],
            plan.Withdrawal.Pots
                .Where(row => row.KeptBack.IsPositive)
                .ToImmutableSortedDictionary(row => row.Pot.Id, row => row.KeptBack),
            plan.Withdrawal.Plan.Withdraw,
            plan.Withdrawal.Plan.Reused,
            plan.Withdrawal.LooseAfter,
            plan.Draft)
        {
            Minimums = [.. plan.Debts.Rows.Where(row => row.Key is not null).Select(row => new ClosedDue(row.Key!.Value, row.Own, row.Paid) { Asked = row.Minimum, Bought = row.Paid && row.Bought.IsPositive ? row.Bought : null })],
            Charged = [.. plan.Debts.Charges.Select(charge => new DueKey(charge.DebtId, charge.Date))],
            Trips = ClosingTrips.Of(plan),
        };
    }

    /// <summary>The record that a routine would leave if it were closed now and wrote nothing, for the papers of one that isn't closed yet.</summary>
    public static ClosedPayday AsPlanned(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        long written = plan.Book.Ledger.Movements.Count;
        return Of(plan, written + 1, written);
    }
}
