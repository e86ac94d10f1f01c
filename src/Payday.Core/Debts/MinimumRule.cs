using Payday.Core.Amounts;

namespace Payday.Core.Debts;

/// <summary>The least that must be paid on a debt each month. One of the nested cases.</summary>
/// <remarks>Never more than balance plus the month's interest (design, 5.6).</remarks>
public abstract record MinimumRule
{
    private MinimumRule()
    {
    }

    /// <summary>Always the same amount.</summary>
    /// <param name="Amount">Zero or more.</param>
    public sealed record Fixed(Money Amount) : MinimumRule;

    /// <summary>The larger of a floor and a part of the balance before interest.</summary>
    /// <param name="Percent">A fraction of the balance, 0 to 1; the part is rounded half to even.</param>
    /// <param name="Floor">Zero or more.</param>
    public sealed record PercentOrFloor(decimal Percent, Money Floor) : MinimumRule;
}
