using Payday.Core.Pots;

namespace Payday.Core.Households;

/// <summary>What a household calls what money goes to.</summary>
public static class TargetNames
{
    /// <summary>What the household calls it, or null where it has no such pot, debt or bill.</summary>
    public static string? NameIn(this MoveTarget target, Household household)
    {
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(household);
        return target switch
        {
            MoveTarget.ToPot to => household.Pots.FirstOrDefault(pot => pot.Id == to.Id)?.Name,
            MoveTarget.ToBill to => household.Bills.FirstOrDefault(bill => bill.Id == to.Id)?.Name,
            MoveTarget.ToDebt to => household.Debts.FirstOrDefault(debt => debt.Id == to.Id)?.Name,
            _ => "the buffer",
        };
    }
}
