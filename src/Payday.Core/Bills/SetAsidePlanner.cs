using System.Collections.Immutable;
using Payday.Core.Amounts;

namespace Payday.Core.Bills;

/// <summary>Plans what each payday sets aside, so that everything due in a pay period is held by that period's payday.</summary>
/// <remarks>
/// <para>
/// Let D be what falls due up to the end of a period, X the income up to and with its payday, both running totals.
/// By then at least min(D - held, X) must have been set aside: all that is needed, or all there is.
/// </para>
/// <para>
/// <see cref="SetAsideMode.AsTheyFall"/> has each payday bring what its own period lacks, and never more than its pay.
/// <see cref="SetAsideMode.Level"/> takes the least concave line over those points, drawn against X: each payday gives
/// a share of its pay that never rises later on, and no plan that is on time is more even. Modigliani and Hohn
/// (Econometrica 23:1, 1955) have the plan fall into intervals, each best on its own needs; the line's corners are
/// their ends. The running total is rounded up to the minor unit, so it is never late, and the last one is exact.
/// </para>
/// <para>
/// Dues are paid in date order. Where no income is known at all, the paydays weigh the same and nothing is known to
/// limit them. A payday that brings nothing among others that do sets nothing aside.
/// </para>
/// </remarks>
public static class SetAsidePlanner
{
    /// <summary>The plan for dues and paydays to come.</summary>
    /// <param name="mode">How money is held back.</param>
    /// <param name="held">What is held already, zero or more; its currency is that of the plan.</param>
    /// <param name="paydays">In order of date.</param>
    /// <param name="dues">In any order; those of one date are paid in the order given.</param>
    /// <exception cref="ArgumentException">The paydays are not in order.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An amount is below zero, or there is no such mode.</exception>
    /// <exception cref="InvalidOperationException">An amount is of another currency.</exception>
    /// <exception cref="OverflowException">A running total doesn't fit 64 bits.</exception>
    public static SetAsidePlan Plan(
        SetAsideMode mode, Money held, IReadOnlyList<PlannedPayday> paydays, IReadOnlyList<Due> dues)
    {
        SetAsideNeeds needs = SetAsideNeeds.From(held, paydays, dues);
        long[] total = mode switch
        {
            SetAsideMode.AsTheyFall => needs.OwnSetAside(),
            SetAsideMode.Level => ConcaveMajorant.RoundedUp(needs.Weights(), needs.LeastSetAside()),
            _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "There is no such mode."),
        };
        return new SetAsidePlan(Rows(held, paydays, needs.DueByPeriod, total), needs.Late(total));
    }

    private static ImmutableArray<SetAsideRow> Rows(
        Money held, IReadOnlyList<PlannedPayday> paydays, ReadOnlySpan<long> due, ReadOnlySpan<long> total)
    {
        var rows = ImmutableArray.CreateBuilder<SetAsideRow>(paydays.Count);
        long setAsideBefore = 0;
        long dueBefore = 0;
        for (int k = 0; k < paydays.Count; k++)
        {
            // The total set aside is never above what is due beyond what is held, so the sum stays in range.
            long heldAfter = held.MinorUnits - due[k] + total[k];
            rows.Add(new SetAsideRow(
                paydays[k].Date,
                Money.FromMinorUnits(due[k] - dueBefore, held.Currency),
                Money.FromMinorUnits(total[k] - setAsideBefore, held.Currency),
                Money.FromMinorUnits(heldAfter, held.Currency).ClampToZero()));
            (setAsideBefore, dueBefore) = (total[k], due[k]);
        }

        return rows.MoveToImmutable();
    }
}
