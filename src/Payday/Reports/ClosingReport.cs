using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Ledgers;
using Payday.Core.Routines;

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
            $"{plan.Bills.Total.ToString(style)} is set aside for bills; {plan.Bills.Dues.Count(due => due.Paid)} of {plan.Bills.Dues.Length} due are marked paid.",
            $"{plan.Debts.Total.ToString(style)} goes to debt minimums; {plan.Debts.Rows.Count(row => row.Paid)} of {plan.Debts.Rows.Count(row => row.Due is not null)} due are marked paid.",
            $"{plan.Pots.Total.ToString(style)} goes in pots.",
            $"{plan.Surplus.Placed.ToString(style)} of surplus is placed.",
            $"{plan.Withdrawal.Plan.WithdrawTotal.ToString(style)} is to be withdrawn, {"note".ToQuantity(plan.Withdrawal.Plan.Withdraw.Pieces)}.",
            .. ReusedNotes.ToBuffer(closed.Ledger.Since(plan.Book.Ledger)) is { IsPositive: true } reused
                ? [$"{reused.ToString(style)} of loose notes at home goes in pots; as much of their money in the account goes to the buffer."]
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
            $"{"ledger line".ToQuantity(closed.Ledger.Since(plan.Book.Ledger).Count())} will be written. They stay: a mistake is undone by its reverse.",
        ];
    }
}
