using Payday.Core.Ids;

namespace Payday.Core.HouseholdChanges;

/// <summary>The thing of a household that a refusal is about.</summary>
public abstract record HouseholdPlace
{
    private HouseholdPlace()
    {
    }

    /// <summary>Its currency.</summary>
    public sealed record Currency : HouseholdPlace;

    /// <summary>The date on which it starts.</summary>
    public sealed record Start : HouseholdPlace;

    /// <summary>What it began with.</summary>
    public sealed record Opening : HouseholdPlace;

    /// <summary>A bill.</summary>
    /// <param name="Id">Its id.</param>
    public sealed record Bill(BillId Id) : HouseholdPlace;

    /// <summary>A debt.</summary>
    /// <param name="Id">Its id.</param>
    public sealed record Debt(DebtId Id) : HouseholdPlace;

    /// <summary>A pot.</summary>
    /// <param name="Id">Its id.</param>
    public sealed record Pot(PotId Id) : HouseholdPlace;
}
