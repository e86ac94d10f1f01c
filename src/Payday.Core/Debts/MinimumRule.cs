using Payday.Core.Amounts;

namespace Payday.Core.Debts;

/// <summary>The least that must be paid on a debt each month. One of the nested cases.</summary>
/// <remarks>Never more than balance plus the month's interest (design, 5.6).</remarks>
public abstract record MinimumRule
{
    private MinimumRule()
    {
    }

    /// <summary>What the rule asks of a balance, before the cap at what is owed.</summary>
    /// <param name="balance">The balance before the month's interest, zero or more.</param>
    public abstract Money Nominal(Money balance);

    /// <summary>What must be paid this month: the nominal amount, but never more than is owed.</summary>
    /// <param name="balance">The balance before the month's interest, zero or more.</param>
    /// <param name="interest">The month's interest, zero or more.</param>
    public Money Due(Money balance, Money interest) => Money.Min(Nominal(balance), balance + interest);

    /// <summary>Always the same amount.</summary>
    /// <param name="Amount">Zero or more.</param>
    public sealed record Fixed(Money Amount) : MinimumRule
    {
        /// <inheritdoc/>
        public override Money Nominal(Money balance) => Amount;
    }

    /// <summary>The larger of a floor and a part of the balance before interest.</summary>
    /// <param name="Percent">A fraction of the balance, 0 to 1; the part is rounded half to even.</param>
    /// <param name="Floor">Zero or more.</param>
    public sealed record PercentOrFloor(decimal Percent, Money Floor) : MinimumRule
    {
        /// <inheritdoc/>
        public override Money Nominal(Money balance) => Money.Max(Floor, balance.Times(Percent));
    }
}
