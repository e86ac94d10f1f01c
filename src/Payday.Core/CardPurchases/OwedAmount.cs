using Payday.Core.Amounts;
using Payday.Core.Households;

namespace Payday.Core.CardPurchases;

/// <summary>What a pot owes back for something that was bought by card.</summary>
internal static class OwedAmount
{
    /// <summary>The amount, or what it comes to in whole notes.</summary>
    /// <param name="household">Whose setting says which.</param>
    /// <param name="amount">What the card paid, zero or more.</param>
    /// <remarks>
    /// Rule (design, section 5, rule 8): rounded up to the smallest note in use, or exact, as the setting says. The cash
    /// above the amount goes to the buffer.
    /// </remarks>
    public static Money Of(Household household, Money amount) =>
        household.Settings.CardRounding == CardRounding.Up ? amount.CeilingTo(household.Settings.Cash.SmallestNote) : amount;
}
