using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>An obligation that can't be paid in full.</summary>
/// <param name="Obligation">What it is, and by when.</param>
/// <param name="Short">How much lacks, above zero, at most its amount.</param>
public sealed record Unpayable(Obligation Obligation, Money Short)
{
    /// <summary>Says what can't be paid when the money goes to the obligations one after the other.</summary>
    /// <param name="obligations">In any order.</param>
    /// <param name="available">The money there is for them; below zero counts as none.</param>
    /// <returns>
    /// In order of importance: essential bills, other bills, minimums, each by date, ties as given. The parts that
    /// lack add up to what the obligations need beyond the money.
    /// </returns>
    /// <remarks>
    /// The order is common practice, no source. A later obligation is not paid before an earlier one, even where
    /// it would fit: the first that can't be paid in full gets what is left.
    /// </remarks>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static ImmutableArray<Unpayable> Find(IReadOnlyList<Obligation> obligations, Money available)
    {
        ArgumentNullException.ThrowIfNull(obligations);
        var unpayable = ImmutableArray.CreateBuilder<Unpayable>();
        Money left = available.ClampToZero();
        foreach (Obligation obligation in obligations.OrderBy(o => o.Kind).ThenBy(o => o.Due))
        {
            Money paid = Money.Min(left, obligation.Amount);
            left -= paid;
            if (paid < obligation.Amount)
            {
                unpayable.Add(new(obligation, obligation.Amount - paid));
            }
        }

        return unpayable.ToImmutable();
    }
}
