using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What can't be paid when even the floors of the pots are too much.</summary>
internal static class UnpayableRules
{
    /// <param name="bills">Step 2.</param>
    /// <param name="debts">Step 3.</param>
    /// <param name="available">What is there today for bills and minimums.</param>
    public static ImmutableArray<Unpayable> Of(BillsStep bills, DebtsStep debts, Money available) => Unpayable.Find(
        [
            .. bills.Dues.Select(due => new Obligation(
                due.Name, due.Key.Date, due.Amount, due.Essential ? ObligationKind.EssentialBill : ObligationKind.Bill)),
            .. debts.Rows.Where(row => row.Due is not null).Select(row => new Obligation(
                row.Name, row.Due!.Value, row.Payment, ObligationKind.Minimum)),
        ],
        available + bills.Held);
}
