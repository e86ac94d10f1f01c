using Payday.Core.Households;
using Payday.Core.Routines;

namespace Payday.Core.Weeks;

/// <summary>Where what is left of a pot moves on to.</summary>
/// <param name="Target">Another pot, a debt, or the account's buffer.</param>
/// <param name="Id">The pot or debt; empty for the buffer.</param>
public sealed record MoveTarget(PlacementTarget Target, string Id)
{
    /// <summary>The account's buffer.</summary>
    public static MoveTarget Buffer { get; } = new(PlacementTarget.Buffer, "");

    /// <summary>Another pot.</summary>
    public static MoveTarget Pot(string potId) => new(PlacementTarget.Pot, potId);

    /// <summary>An extra payment on a debt.</summary>
    public static MoveTarget Debt(string debtId) => new(PlacementTarget.Debt, debtId);

    /// <summary>What the household calls it, or null where it has no such pot or debt.</summary>
    public string? NameIn(Household household)
    {
        ArgumentNullException.ThrowIfNull(household);
        return Target switch
        {
            PlacementTarget.Pot => household.Pots.FirstOrDefault(pot => pot.Id == Id)?.Name,
            PlacementTarget.Debt => household.Debts.FirstOrDefault(debt => debt.Id == Id)?.Name,
            _ => "the buffer",
        };
    }
}
