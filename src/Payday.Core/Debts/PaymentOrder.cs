using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>Sends money above the minimums to the debts, one after the other.</summary>
/// <remarks>
/// A chosen debt comes first. Then the order's criterion decides, in a tie the other one (smallest balance,
/// highest rate), then the place in the list. Balances are those of the moment, so in the order of balances
/// the target can change from month to month.
/// </remarks>
internal readonly record struct PaymentOrder(DebtOrder Order, DebtId? ChosenId)
{
    /// <summary>Pays the first debt as far as the money goes, then the next, and returns what no debt needs.</summary>
    /// <param name="money">Zero or more.</param>
    /// <param name="debts">The debts, in list order; paid ones are passed over.</param>
    /// <param name="paid">Told of each payment, or null.</param>
    public Money Spend(Money money, IReadOnlyList<RunningDebt> debts, Action<RunningDebt, Money>? paid = null)
    {
        while (money.IsPositive && First(debts) is { } target)
        {
            Money payment = Money.Min(money, target.Balance);
            target.Pay(payment);
            paid?.Invoke(target, payment);
            money -= payment;
        }

        return money;
    }

    private RunningDebt? First(IReadOnlyList<RunningDebt> debts)
    {
        RunningDebt? first = null;
        foreach (RunningDebt debt in debts)
        {
            if (!debt.IsPaid && (first is null || Before(debt, first)))
            {
                first = debt;
            }
        }

        return first;
    }

    private bool Before(RunningDebt debt, RunningDebt other)
    {
        if (ChosenId is not null && (debt.State.Id == ChosenId || other.State.Id == ChosenId))
        {
            return debt.State.Id == ChosenId;
        }

        int balance = debt.Balance.CompareTo(other.Balance);
        int rate = other.State.YearlyRate.CompareTo(debt.State.YearlyRate);
        (int decides, int ties) = Order == DebtOrder.SmallestBalance ? (balance, rate) : (rate, balance);
        return decides < 0 || (decides == 0 && ties < 0);
    }
}
