using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.ClosedPaydays;

/// <summary>What stands in the way of closing a payday.</summary>
internal static class ClosingChecks
{
    public static ImmutableArray<string> Obstacles(RoutinePlan plan)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        var obstacles = ImmutableArray.CreateBuilder<string>();
        BufferHelp buffer = plan.Income.Buffer;
        if (buffer.IsAsked)
        {
            obstacles.Add(
                $"The payday is {buffer.Short.ToString(style)} short, and the buffer has {buffer.Has.ToString(style)}: "
                + "say in the Income step, or with --buffer AMOUNT, what it gives; 0 gives nothing."
                + (plan.Unpayable.IsEmpty ? "" : " Without it:"));
        }

        if (buffer.Amount > buffer.Has)
        {
            obstacles.Add($"The buffer has {buffer.Has.ToString(style)}, so it can't give {buffer.Amount.ToString(style)}.");
        }
        else if (buffer.Amount.IsNegative)
        {
            obstacles.Add("What the buffer gives is below zero; place what it is to get in the Surplus step.");
        }

        foreach (Pots.Unpayable unpaid in plan.Unpayable)
        {
            obstacles.Add(unpaid.Obligation.Kind == Pots.ObligationKind.Pot
                ? $"{unpaid.Obligation.Name} can't be filled: {unpaid.Short.ToString(style)} of its {unpaid.Obligation.Amount.ToString(style)} is not there; lower it by hand."
                : $"{unpaid.Obligation.Name} can't be paid in full: {unpaid.Short.ToString(style)} short by {PlainDates.DayMonthYear(unpaid.Obligation.Due)}.");
        }

        if (plan.LeftToPlace.IsPositive)
        {
            obstacles.Add($"{plan.LeftToPlace.ToString(style)} is left to place.");
        }
        else if (plan.LeftToPlace.IsNegative && obstacles.Count == 0)
        {
            obstacles.Add($"{(-plan.LeftToPlace).ToString(style)} more is placed than there is.");
        }

        if (plan.Income.Lines.Any(line => line.Amount.IsNegative))
        {
            obstacles.Add("An income is below zero.");
        }

        if (plan.Pots.Rows.Any(row => row.Fill.IsNegative))
        {
            obstacles.Add("A fill is below zero.");
        }

        obstacles.AddRange(plan.Surplus.Placements
            .Select(placement => (Debt: (placement.Target as MoveTarget.ToDebt)?.Id, placement.Amount))
            .Where(placement => placement.Debt is { } debt && placement.Amount > SurplusRules.BalanceAfter(plan.Debts, debt))
            .Select(placement => $"More is placed on {plan.Book.Household.Debts.Single(debt => debt.Id == placement.Debt).Name} than is owed."));
        obstacles.AddRange(plan.Withdrawal.Pots
            .Where(row => row.KeptBack.IsNegative)
            .Select(row => $"The notes for {row.Pot.Name} are {(-row.KeptBack).ToString(style)} more than it has."));
        return obstacles.ToImmutable();
    }
}
