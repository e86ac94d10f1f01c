using System.Collections.Immutable;

namespace Payday.Core.Amounts;

public readonly partial struct Money
{
    /// <summary>
    /// Shares this amount by weights without losing a minor unit.
    /// </summary>
    /// <param name="weights">At least one, none negative, not all zero.</param>
    /// <returns>
    /// A share for each weight, in order; the shares add up to this amount. Every share is its exact
    /// quota rounded down or up: the largest remainders get the minor units left over, ties the earlier.
    /// A negative amount is shared as its opposite is.
    /// </returns>
    /// <remarks>
    /// Source of the rule: Hamilton's method (largest remainder). It keeps to the quota, and so is open
    /// to the Alabama paradox; an amount is shared once here, not seat by seat, so that never shows.
    /// </remarks>
    /// <exception cref="ArgumentException">There are no weights, one is negative, or all are zero.</exception>
    public ImmutableArray<Money> Allocate(params ReadOnlySpan<long> weights)
    {
        Int128 total = 0;
        foreach (long weight in weights)
        {
            if (weight < 0)
            {
                throw new ArgumentException("A weight is negative.", nameof(weights));
            }

            total += weight;
        }

        if (total == 0)
        {
            throw new ArgumentException("There is no weight above zero.", nameof(weights));
        }

        Int128 amount = Int128.Abs(MinorUnits);
        var shares = new Int128[weights.Length];
        var remainders = new Int128[weights.Length];
        Int128 left = amount;
        for (int i = 0; i < weights.Length; i++)
        {
            (shares[i], remainders[i]) = Int128.DivRem(amount * weights[i], total);
            left -= shares[i];
        }

        // Sorting is stable, so among equal remainders the earlier comes first.
        foreach (int i in Enumerable.Range(0, shares.Length).OrderByDescending(i => remainders[i]).Take((int)left))
        {
            shares[i] += 1;
        }

        var result = ImmutableArray.CreateBuilder<Money>(shares.Length);
        foreach (Int128 share in shares)
        {
            result.Add(new Money((long)(MinorUnits < 0 ? -share : share), Currency));
        }

        return result.MoveToImmutable();
    }
}
