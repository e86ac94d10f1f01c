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
    public static ImmutableArray<ClosingFault> Obstacles(RoutinePlan plan)
    {
        var obstacles = ImmutableArray.CreateBuilder<ClosingFault>();
        BufferHelp buffer = plan.Income.Buffer;
        if (buffer.IsAsked)
        {
            obstacles.Add(new ClosingFault.BufferAsked(buffer.Short, buffer.Has, plan.Unpayable.IsEmpty));
        }

        if (buffer.Amount > buffer.Has)
        {
            obstacles.Add(new ClosingFault.BufferHasLess(buffer.Has, buffer.Amount));
        }
        else if (buffer.Amount.IsNegative)
        {
            obstacles.Add(new ClosingFault.BufferGivesBelowZero());
        }

        obstacles.AddRange(plan.Unpayable.Select(unpaid => new ClosingFault.CantPay(unpaid)));
        if (plan.LeftToPlace.IsPositive)
        {
            obstacles.Add(new ClosingFault.LeftToPlace(plan.LeftToPlace));
        }
        else if (plan.LeftToPlace.IsNegative && obstacles.Count == 0)
        {
            obstacles.Add(new ClosingFault.PlacedTooMuch(-plan.LeftToPlace));
        }

        if (plan.Income.Lines.Any(line => line.Amount.IsNegative))
        {
            obstacles.Add(new ClosingFault.IncomeBelowZero());
        }

        if (plan.Pots.Rows.Any(row => row.Fill.IsNegative))
        {
            obstacles.Add(new ClosingFault.FillBelowZero());
        }

        obstacles.AddRange(plan.Surplus.Placements
            .Select(placement => (Debt: (placement.Target as MoveTarget.ToDebt)?.Id, placement.Amount))
            .Where(placement => placement.Debt is { } debt && placement.Amount > SurplusRules.BalanceAfter(plan.Debts, debt))
            .Select(placement => new ClosingFault.MoreThanOwed(placement.Debt!.Value, plan.Book.Household.Debts.Single(debt => debt.Id == placement.Debt).Name)));
        obstacles.AddRange(plan.Withdrawal.Pots
            .Where(row => row.KeptBack.IsNegative)
            .Select(row => new ClosingFault.NotesAbove(row.Pot.Id, row.Pot.Name, -row.KeptBack)));
        if (obstacles.Count == 0 && WithdrawalRoom.Of(plan) is { IsTooLittle: true } room)
        {
            obstacles.Add(new ClosingFault.AccountHasLess(room.Has, room.Asked));
        }

        return obstacles.ToImmutable();
    }
}
