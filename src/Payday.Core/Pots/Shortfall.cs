using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>Which fills to cut when there is not enough money for all.</summary>
/// <param name="Cuts">The cuts, first cut first; fills that stay as they are are left out.</param>
/// <param name="Uncovered">What even all cuts don't cover.</param>
/// <param name="Overshoot">What the cuts give beyond the need: less than one unit of the last fill cut.</param>
public sealed record Shortfall(ImmutableArray<FillCut> Cuts, Money Uncovered, Money Overshoot)
{
    /// <summary>Proposes cuts: the highest rank number first, and in a tie the later in the list.</summary>
    /// <param name="fills">The fills that may be cut.</param>
    /// <param name="need">How much is lacking; zero or less needs no cut.</param>
    /// <returns>Cuts that add up to the need, less what is uncovered, plus the overshoot.</returns>
    /// <remarks>
    /// Each fill is cut by as many whole units as are needed, never below its floor, before the next. Only when
    /// whole units everywhere are not enough do the odd parts above the floors go too, in the same order:
    /// no bill is left unpaid for the sake of a round fill. Source of the rule: the project's design, 5.5.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A unit is not above zero.</exception>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Shortfall Propose(IReadOnlyList<CuttableFill> fills, Money need)
    {
        ArgumentNullException.ThrowIfNull(fills);
        ImmutableArray<CuttableFill> inOrder = [.. fills.Reverse().OrderByDescending(fill => fill.Rank)];
        var cuts = new Money[inOrder.Length];
        Money lacking = need;
        for (int i = 0; i < cuts.Length; i++)
        {
            Money unit = inOrder[i].Unit;
            cuts[i] = Money.Min(Room(inOrder[i]).FloorTo(unit), lacking.ClampToZero().CeilingTo(unit));
            lacking -= cuts[i];
        }

        for (int i = 0; i < cuts.Length; i++)
        {
            Money odd = Money.Min(Room(inOrder[i]) - cuts[i], lacking.ClampToZero());
            cuts[i] += odd;
            lacking -= odd;
        }

        return new(
            [.. inOrder.Zip(cuts, (fill, cut) => new FillCut(fill.PotId, cut, fill.Fill - cut)).Where(cut => cut.Cut.IsPositive)],
            lacking.ClampToZero(),
            need.IsPositive ? (-lacking).ClampToZero() : Money.Zero(need.Currency));
    }

    private static Money Room(CuttableFill fill) => (fill.Fill - fill.Floor).ClampToZero();
}
