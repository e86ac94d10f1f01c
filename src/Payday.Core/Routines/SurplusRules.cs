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
    public static SurplusStep Of(RoutineFacts facts, DebtsStep debts, PotsStep pots, Money left)
    {
        Household household = facts.Book.Household;
        Money nothing = Money.Zero(household.Currency);
        DebtOutlook outlook = DebtOutlook.After(facts, id => LastRow(debts, id).NewBalance);
        ImmutableArray<DebtState> after = outlook.Debts;
        ImmutableArray<Placement> placements = facts.Draft.Placements
            ?? Proposal(household, [.. after.Select(debt => debt with { Balance = Unfunded(debts, debt.Id) })], left);

        return new SurplusStep(
            left,
            placements,
            facts.Draft.Placements is not null,
            Money.Sum(placements.Select(placement => placement.Amount), household.Currency),
            Course(after),
            // Paid at once rather than taken off the balance, so that the minimum of a debt it clears rolls on.
            Course([.. after.Select(debt => debt with { PaidAtOnce = Money.Min(debt.Balance.ClampToZero(), On(placements, debt.Id, nothing)) })]),
            PotCourse.Of(facts, pots, placements));

        DebtProjection Course(ImmutableArray<DebtState> states) =>
            DebtProjection.Project(outlook.From, states, nothing, nothing, household.Settings.SurplusOrder);
    }

    /// <summary>What can be paid on a debt today beyond its minimums: what is owed after them, less interest whose day is still to come.</summary>
    public static Money BalanceAfter(DebtsStep debts, DebtId debtId) => (LastRow(debts, debtId).NewBalance
        - Money.Sum(debts.Rows.Where(row => row.DebtId == debtId).Select(row => row.Expected), debts.Total.Currency)).ClampToZero();

    // What was bought with a card is paid by what waits for it.
    private static Money Unfunded(DebtsStep debts, DebtId debtId) => (BalanceAfter(debts, debtId)
        - Money.Sum(debts.Covers.Where(cover => cover.DebtId == debtId).Select(cover => cover.Waits), debts.Total.Currency)).ClampToZero();

    private static DebtRow LastRow(DebtsStep debts, DebtId debtId) => debts.Rows.Last(row => row.DebtId == debtId);

    private static ImmutableArray<Placement> Proposal(Household household, ImmutableArray<DebtState> debts, Money left)
    {
        if (!left.IsPositive)
        {
            return [];
        }

        SurplusPlan plan = SurplusPlan.Propose(debts, left, household.Settings.SurplusOrder);
        ImmutableArray<Placement> placements =
            [.. plan.Payments.Select(payment => new Placement(MoveTarget.Debt(payment.DebtId), payment.Amount))];
        return plan.LeftOver.IsPositive
            ? placements.Add(new Placement(MoveTarget.Buffer, plan.LeftOver))
            : placements;
    }

    private static Money On(ImmutableArray<Placement> placements, DebtId debtId, Money nothing) => placements
        .Where(placement => placement.Target == MoveTarget.Debt(debtId))
        .Aggregate(nothing, (sum, placement) => sum + placement.Amount);
}
