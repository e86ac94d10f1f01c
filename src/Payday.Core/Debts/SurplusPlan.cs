using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>Which debts get a payday's surplus.</summary>
/// <param name="Payments">What each debt gets, in the order paid; debts that get nothing are left out.</param>
/// <param name="LeftOver">What no debt needs.</param>
public sealed record SurplusPlan(ImmutableArray<SurplusPayment> Payments, Money LeftOver)
{
    /// <summary>
    /// Proposes where a surplus goes: the first debt of the order, up to its balance, then the next.
    /// </summary>
    /// <param name="debts">The debts with their balances after this payday's minimums.</param>
    /// <param name="surplus">Zero or more.</param>
    /// <param name="order">Which debt comes first; a tie is for the other criterion, then for the place in the list.</param>
    /// <param name="chosenId">A debt that comes before the order, or null.</param>
    /// <returns>Payments that, with what is left over, add up to the surplus.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The surplus, a rate or a minimum is out of its range.</exception>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static SurplusPlan Propose(
        IReadOnlyList<DebtState> debts, Money surplus, DebtOrder order, DebtId? chosenId = null)
    {
        ArgumentNullException.ThrowIfNull(debts);
        ArgumentOutOfRangeException.ThrowIfNegative(surplus.MinorUnits, nameof(surplus));
        List<RunningDebt> running = [.. debts.Select(debt => new RunningDebt(debt))];
        var payments = ImmutableArray.CreateBuilder<SurplusPayment>();
        Money leftOver = new PaymentOrder(order, chosenId).Spend(
            surplus, running, (debt, payment) => payments.Add(new(debt.State.Id, payment)));
        return new(payments.ToImmutable(), leftOver);
    }
}

/// <summary>A part of the surplus for one debt.</summary>
/// <param name="DebtId">The debt.</param>
/// <param name="Amount">Above zero, at most its balance.</param>
public readonly record struct SurplusPayment(DebtId DebtId, Money Amount);
