using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Step 5: a proposal for the rest, and what it does to the debts.</summary>
internal static class SurplusRules
{
    public static SurplusStep Of(RoutineFacts facts, DebtsStep debts, Money left)
    {
        Household household = facts.Book.Household;
        Currency currency = household.Currency;
        DebtOrder order = household.Settings.SurplusOrder;
        DebtOutlook outlook = DebtOutlook.After(facts, id => LastRow(debts, id).NewBalance);
        ImmutableArray<DebtState> owed = [.. outlook.Debts.Select(debt => debt with { Balance = Unfunded(debts, debt.Id) })];
        ImmutableArray<Placement> placements = facts.Draft.Placements ?? Proposal(owed, left, order);
        return new SurplusStep(
            left,
            placements,
            facts.Draft.Placements is not null,
            Money.Sum(placements.Select(placement => placement.Amount), currency))
        {
            Outlook = outlook,
            Owed = owed,
            Order = order,
        };
    }

    /// <summary>The debts' course with what is placed on them.</summary>
    public static DebtProjection Course(DebtOutlook outlook, ImmutableArray<Placement> placements, DebtOrder order, Currency currency)
    {
        Money nothing = Money.Zero(currency);

        // Paid at once rather than taken off the balance, so that the minimum of a debt it clears rolls on.
        ILookup<DebtId, Money> placed = placements.Where(placement => placement.Target is MoveTarget.ToDebt)
            .ToLookup(placement => ((MoveTarget.ToDebt)placement.Target).Id, placement => placement.Amount);
        ImmutableArray<DebtState> states = placed.Count == 0
            ? outlook.Debts
            : [.. outlook.Debts.Select(debt => debt with { PaidAtOnce = Money.Min(debt.Balance.ClampToZero(), Money.Sum(placed[debt.Id], currency)) })];
        return DebtProjection.Project(outlook.From, states, nothing, nothing, order);
    }

    /// <summary>What can be paid on a debt today beyond its minimums: what is owed after them, less interest whose day is still to come.</summary>
    public static Money BalanceAfter(DebtsStep debts, DebtId debtId) => (LastRow(debts, debtId).NewBalance
        - Money.Sum(debts.RowsOf(debtId).Select(row => row.Expected), debts.Total.Currency)).ClampToZero();

    // What was bought with a card is paid by what waits for it.
    private static Money Unfunded(DebtsStep debts, DebtId debtId) => (BalanceAfter(debts, debtId)
        - Money.Sum(debts.CoverOf(debtId).Select(cover => cover.Waits), debts.Total.Currency)).ClampToZero();

    private static DebtRow LastRow(DebtsStep debts, DebtId debtId) => debts.RowsOf(debtId).Last();

    /// <summary>Where the rest is proposed to go.</summary>
    /// <param name="debts">The debts, with what today's money can pay on each as its balance.</param>
    /// <param name="left">What is left; nothing is proposed below zero.</param>
    /// <param name="order">Which debt comes first.</param>
    public static ImmutableArray<Placement> Proposal(ImmutableArray<DebtState> debts, Money left, DebtOrder order)
    {
        if (!left.IsPositive)
        {
            return [];
        }

        SurplusPlan plan = SurplusPlan.Propose(debts, left, order);
        ImmutableArray<Placement> placements =
            [.. plan.Payments.Select(payment => new Placement(MoveTarget.Debt(payment.DebtId), payment.Amount))];
        return plan.LeftOver.IsPositive
            ? placements.Add(new Placement(MoveTarget.Buffer, plan.LeftOver))
            : placements;
    }
}
