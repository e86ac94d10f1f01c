using Payday.Core.Amounts;

namespace Payday.Core.Debts;

/// <summary>The least that must be paid on a debt on a due date. One of the nested cases.</summary>
/// <remarks>Never more than balance plus the month's interest (design, 5.6).</remarks>
public abstract record MinimumRule
{
    private MinimumRule()
    {
    }

    /// <summary>What the rule asks of a balance, before the cap at what is owed.</summary>
    /// <param name="balance">The balance before the interest, zero or more.</param>
    /// <param name="interest">The interest that is charged with it, zero or more; a month's, or none where it was charged before.</param>
    public abstract Money Nominal(Money balance, Money interest);

    /// <summary>What must be paid: the nominal amount, but never more than is owed.</summary>
    /// <param name="balance">The balance before the interest, zero or more.</param>
    /// <param name="interest">The interest that is charged with it, zero or more.</param>
    public Money Due(Money balance, Money interest) => Money.Min(Nominal(balance, interest), balance + interest);

    /// <summary>Always the same amount.</summary>
    /// <param name="Amount">Zero or more.</param>
    public sealed record Fixed(Money Amount) : MinimumRule
    {
        /// <inheritdoc/>
        public override Money Nominal(Money balance, Money interest) => Amount;
    }

    /// <summary>The larger of a floor and a part of the balance before interest.</summary>
    /// <param name="Percent">A fraction of the balance, 0 to 1; the part is rounded half to even.</param>
    /// <param name="Floor">Zero or more.</param>
    public sealed record PercentOrFloor(decimal Percent, Money Floor) : MinimumRule
    {
        /// <summary>
        /// Whether the month's interest comes on top of the part, as many card lenders ask, so that the balance always falls;
        /// the floor is held against both together. Common practice, from memory: lenders' own terms, no source.
        /// </summary>
        public bool PlusInterest { get; init; }

        /// <inheritdoc/>
        public override Money Nominal(Money balance, Money interest)
        {
            Money part = balance.Times(Percent);
            return Money.Max(Floor, PlusInterest ? part + interest : part);
        }
    }
}
