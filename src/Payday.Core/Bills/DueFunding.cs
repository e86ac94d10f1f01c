using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Bills;

/// <summary>A part of a due that one payday, or what was held, pays for.</summary>
/// <param name="Due">The due.</param>
/// <param name="Amount">The part, above zero and at most the due's amount.</param>
public sealed record DueFunding(Due Due, Money Amount)
{
    /// <summary>What money that is held already pays for: the earliest due first.</summary>
    /// <param name="held">Zero or more; what is left when all dues are paid for has no part here.</param>
    /// <param name="dues">In any order; those of one date in the order given.</param>
    public static ImmutableArray<DueFunding> FromHeld(Money held, IEnumerable<Due> dues) =>
        Between(Money.Zero(held.Currency), held, dues);

    /// <summary>What one payday of a plan pays for: the earliest due that is not yet paid for comes first.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="payday">Which of its rows, from zero.</param>
    /// <param name="held">What was held when the plan was made.</param>
    /// <param name="dues">The dues that the plan was made for.</param>
    /// <returns>In date order; the parts add up to what the payday sets aside.</returns>
    public static ImmutableArray<DueFunding> FromPayday(SetAsidePlan plan, int payday, Money held, IEnumerable<Due> dues)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Money before = held + Money.Sum(plan.Rows.Take(payday).Select(row => row.SetAside), held.Currency);
        return Between(before, before + plan.Rows[payday].SetAside, dues);
    }

    // Laid end to end in date order, the dues are stretches of one line, and so is the money that pays for them.
    private static ImmutableArray<DueFunding> Between(Money from, Money to, IEnumerable<Due> dues)
    {
        var parts = ImmutableArray.CreateBuilder<DueFunding>();
        Money end = Money.Zero(from.Currency);
        foreach (Due due in dues.OrderBy(due => due.Date))
        {
            Money start = end;
            end += due.Amount;
            Money part = Money.Min(end, to) - Money.Max(start, from);
            if (part.IsPositive)
            {
                parts.Add(new DueFunding(due, part));
            }
        }

        return parts.DrainToImmutable();
    }
}
