using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What closing a payday writes, before it is.</summary>
internal static class ClosingReport
{
    /// <summary>A sentence each: what came in and where it goes, then what there is afterwards.</summary>
    /// <param name="plan">The routine.</param>
    /// <param name="closed">The book that closing it comes to.</param>
    public static IEnumerable<string> Of(RoutinePlan plan, Book closed) => [.. Goes(plan, closed), .. After(plan, closed)];

    /// <summary>What came in and where it goes.</summary>
    public static IEnumerable<string> Goes(RoutinePlan plan, Book closed)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        return
        [
            $"{plan.Income.CameIn.ToString(style)} came in.",
            .. plan.Income.Overdraft is { Owed.IsPositive: true } overdraft ? [$"{overdraft.Amount.ToString(style)} pays off the overdraft{(overdraft.Rest.IsZero ? "" : $", of which {overdraft.Rest.ToString(style)} is left")}."] : Array.Empty<string>(),
            .. plan.Income.Buffer.Amount.IsPositive ? [$"{plan.Income.Buffer.Amount.ToString(style)} comes from the buffer, which keeps {(plan.Income.Buffer.Has - plan.Income.Buffer.Amount).ToString(style)}."] : Array.Empty<string>(),
            .. Step(plan.Bills.Total, "is set aside for bills", plan.Bills.Dues.Count(due => due.Paid), plan.Bills.Dues.Length, style),
            .. Step(plan.Debts.Total, "goes to debt minimums", plan.Debts.Rows.Count(row => row.Paid), plan.Debts.Rows.Count(row => row.Due is not null), style),
            .. plan.Pots.Total.IsZero ? Array.Empty<string>() : [$"{plan.Pots.Total.ToString(style)} goes in pots."],
            .. Placed(plan, style),
            .. plan.Withdrawal.Plan.WithdrawTotal.IsZero ? Array.Empty<string>() : [$"{plan.Withdrawal.Plan.WithdrawTotal.ToString(style)} is to be withdrawn, {"note".ToQuantity(plan.Withdrawal.Plan.Withdraw.Pieces)}."],
            .. ReusedNotes.ToBuffer(closed.Ledger.Since(plan.Book.Ledger)) is { IsPositive: true } reused
                ? [$"{reused.ToString(style)} of loose notes at home goes in pots; the same amount of the pots' money in the account goes to the buffer instead."]
                : Array.Empty<string>(),
        ];
    }

    /// <summary>What there is afterwards, and that it stays.</summary>
    public static IEnumerable<string> After(RoutinePlan plan, Book closed)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        Balances after = closed.Ledger.Balances;
        return
        [
            $"Afterwards {after.In(Place.Account).ToString(style)} is in the account and {after.In(Place.Cash).ToString(style)} in cash.",
            $"Closing writes {"ledger line".ToQuantity(closed.Ledger.Since(plan.Book.Ledger).Count())}; a line can be undone later, or the whole payday opened again.",
        ];
    }

    // Nothing is said of what there is nothing of.
    private static IEnumerable<string> Step(Money total, string does, int paid, int due, NumberStyle style)
    {
        if (!total.IsZero || due > 0)
        {
            yield return $"{total.ToString(style)} {does}{(due == 0 ? "" : $"; {paid} of {due} due {(due == 1 ? "is" : "are")} marked paid")}.";
        }
    }

    // An extra payment is no due that anything reminds of: it is said here who makes it.
    private static IEnumerable<string> Placed(RoutinePlan plan, NumberStyle style)
    {
        ImmutableArray<Placement> placements = plan.Surplus.Placements;
        string Name(Placement one) => CleanText.OneLine(one.Target.NameIn(plan.Book.Household));
        if (!placements.IsEmpty)
        {
            yield return $"{plan.Surplus.Placed.ToString(style)} of surplus goes to {(placements.Length == 1 ? Name(placements[0]) : placements.Select(one => $"{Name(one)} ({one.Amount.ToString(style)})").InWords())}.";
        }

        foreach (Placement one in placements.Where(one => one.Target is MoveTarget.ToDebt))
        {
            yield return $"Pay the {one.Amount.ToString(style)} to {Name(one)} yourself: the account here counts it as paid.";
        }
    }
}
