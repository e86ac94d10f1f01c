using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Bills;

/// <summary>Why a level plan sets aside what it does today: the share of each pay, and what sets it.</summary>
/// <param name="Share">The part of each pay up to <paramref name="Payday"/>, as a fraction, zero or more; today's set-aside by today's pay.</param>
/// <param name="Payday">The payday up to which it is so: by it all that was set aside is needed, and after it the share is less.</param>
/// <param name="Sets">The largest due of that payday's period.</param>
/// <remarks>
/// A level plan is the least concave line over what is needed (<see cref="SetAsidePlanner"/>); today's share is its first slope, and the
/// first corner, where nothing is held beyond what is due, is what the slope comes from.
/// </remarks>
public sealed record SetAsideReason(decimal Share, LocalDate Payday, Due Sets)
{
    /// <summary>The reason of a plan.</summary>
    /// <param name="plan">A level plan.</param>
    /// <param name="pay">What comes in today.</param>
    /// <param name="dues">All dues of the plan.</param>
    /// <returns>It; null where nothing is set aside today, or no later payday has a part in it.</returns>
    public static SetAsideReason? Of(SetAsidePlan plan, Money pay, IReadOnlyList<Due> dues)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(dues);
        if (plan.Rows.IsEmpty || !plan.Rows[0].SetAside.IsPositive || !pay.IsPositive)
        {
            return null;
        }

        int corner = 0;
        while (corner < plan.Rows.Length - 1 && plan.Rows[corner].HeldAfter.IsPositive)
        {
            corner++;
        }

        if (corner == 0)
        {
            return null;
        }

        LocalDate from = plan.Rows[corner].Date;
        LocalDate? to = corner + 1 < plan.Rows.Length ? plan.Rows[corner + 1].Date : null;
        Due? largest = dues.Where(due => due.Date >= from && !(due.Date >= to)).MaxBy(due => due.Amount);
        return largest is null ? null : new SetAsideReason((decimal)plan.Rows[0].SetAside.MinorUnits / pay.MinorUnits, from, largest);
    }
}
