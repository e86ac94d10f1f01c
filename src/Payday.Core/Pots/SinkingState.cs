using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.Pots;

/// <summary>A sinking pot on a payday: how far it is, and for which date it saves.</summary>
/// <param name="Stage">How far it is.</param>
/// <param name="By">The date by which the target must be there, or last had to be.</param>
/// <param name="Spent">What was spent of it and isn't settled, zero or more.</param>
public sealed record SinkingState(SinkingStage Stage, LocalDate By, Money Spent)
{
    // The longest schedules come round every ten years; dates typed in may lie a hundred years ahead.
    private static readonly int[] YearsAhead = [1, 11, 120];

    /// <summary>Looks at a sinking pot.</summary>
    /// <param name="kind">What it is for.</param>
    /// <param name="balance">What it has.</param>
    /// <param name="spendings">All that stands of what was spent from it, in the order in which it was entered.</param>
    /// <param name="holidays">The bank holidays, for a repeat on working days.</param>
    /// <param name="payday">The payday.</param>
    /// <remarks>
    /// Rule (design, 5.11): what is spent counts as bought, however much of the target it was. Where the pot repeats it
    /// then saves for the first date after; spending that is nearer to the purchase before than to the next date is part of
    /// that purchase and moves nothing on. Not spent, it waits, also beyond its repeat. Where it doesn't repeat, only
    /// the person knows whether that was all. Which date a purchase belongs to is a rule of our own, no source.
    /// </remarks>
    public static SinkingState Of(
        PotKind.Sinking kind, Money balance, IEnumerable<PotSpending> spendings, BankHolidays holidays, LocalDate payday)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(spendings);
        ImmutableArray<PotSpending> purchases = Purchases(spendings, kind.SettledTo);
        Money spent = Money.Sum(purchases.Select(purchase => purchase.Amount), kind.Target.Currency);
        if (kind.Finished)
        {
            return new(SinkingStage.Finished, kind.By, spent);
        }

        if (kind.Repeats is null && !purchases.IsEmpty)
        {
            return new(SinkingStage.Bought, kind.By, spent);
        }

        LocalDate by = kind.By;
        LocalDate? bought = null;
        foreach (LocalDate date in purchases.Select(purchase => purchase.Date))
        {
            if (bought is { } last && IsNearer(date, last, by))
            {
                continue;
            }

            if (Next(kind.Repeats!, holidays, date > by ? date : by) is not { } next)
            {
                return new(SinkingStage.Finished, by, spent);
            }

            // Not earlier than its date, and not earlier than the day itself: what else is bought soon after is part of it.
            (bought, by) = (date > by ? date : by, next);
        }

        return new(payday > by && balance < kind.TargetBy(by) ? SinkingStage.PastItsDate : SinkingStage.Saving, by, spent);
    }

    private static bool IsNearer(LocalDate date, LocalDate last, LocalDate next) =>
        Period.DaysBetween(last, date) <= Period.DaysBetween(date, next);

    // A refund takes back the purchases before it, the last one first.
    private static ImmutableArray<PotSpending> Purchases(IEnumerable<PotSpending> spendings, LocalDate? settledTo)
    {
        var purchases = new List<PotSpending>();
        foreach (PotSpending spending in spendings)
        {
            if (spending.Amount.IsPositive)
            {
                purchases.Add(spending);
                continue;
            }

            Money back = -spending.Amount;
            while (back.IsPositive && purchases.Count > 0)
            {
                PotSpending last = purchases[^1];
                Money taken = Money.Min(back, last.Amount);
                back -= taken;
                purchases.RemoveAt(purchases.Count - 1);
                if (taken < last.Amount)
                {
                    purchases.Add(last with { Amount = last.Amount - taken });
                }
            }
        }

        return [.. purchases.Where(purchase => !(purchase.Date <= settledTo)).OrderBy(purchase => purchase.Date)];
    }

    private static LocalDate? Next(Schedule repeats, BankHolidays holidays, LocalDate after)
    {
        foreach (int years in YearsAhead)
        {
            ImmutableArray<Occurrence> dates = Occurrences.Between(repeats, Shift.None, holidays, after.PlusDays(1), after.PlusYears(years));
            if (!dates.IsEmpty)
            {
                return dates[0].Date;
            }
        }

        return null;
    }
}
