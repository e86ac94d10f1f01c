using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What closed paydays put in pots for a calendar month.</summary>
/// <remarks>
/// A payday that carries a part of two months has one fill for both: the earlier month gets its share first, and the
/// last one the rest. A payday that the schedules no longer know counts for the month it lies in.
/// </remarks>
internal sealed class MonthFillRules(Book book)
{
    /// <summary>The months that a payday carries a part of, with what a pot has for them so far.</summary>
    public ImmutableArray<MonthFills> Of(Pot pot, IEnumerable<MonthPaydays> carried, LocalDate payday) => pot.Kind is PotKind.Spending { Per: FillPer.Month or FillPer.MonthSpread } kind
        ? [.. carried.Select(month => SoFar(pot, kind, month, payday))]
        : [];

    private MonthFills SoFar(Pot pot, PotKind.Spending kind, MonthPaydays month, LocalDate before)
    {
        Money sum = Money.Zero(book.Household.Currency);
        for (int at = book.Closed.Length - 1; at >= 0; at--)
        {
            // No pay is moved by more than a month.
            ClosedPayday closed = book.Closed[at];
            if (closed.Payday.ToYearMonth().PlusMonths(1) < month.Month)
            {
                break;
            }

            if (closed.Payday < before)
            {
                sum += Part(pot, kind, month, closed);
            }
        }

        return new MonthFills(month, sum);
    }

    private Money Part(Pot pot, PotKind.Spending kind, MonthPaydays month, ClosedPayday closed)
    {
        Money nothing = Money.Zero(book.Household.Currency);
        ImmutableArray<MonthPaydays> carried = book.Household.Paydays.MonthsOf(closed.Payday);
        if (carried.IsEmpty)
        {
            return closed.Payday.ToYearMonth() == month.Month ? PotRecord.FilledOn(book, pot.Id, closed) : nothing;
        }

        if (carried.All(candidate => candidate.Month != month.Month))
        {
            return nothing;
        }

        Money left = PotRecord.FilledOn(book, pot.Id, closed);
        foreach (MonthPaydays candidate in carried)
        {
            bool isLast = candidate.Month == carried[^1].Month;
            Money part = isLast || left.IsZero ? left : Money.Min(left, Share(pot, kind, candidate, closed.Payday));
            if (candidate.Month == month.Month)
            {
                return part;
            }

            left -= part;
        }

        return nothing;
    }

    private Money Share(Pot pot, PotKind.Spending kind, MonthPaydays month, LocalDate payday) => MonthShare.Of(
        kind,
        SoFar(pot, kind, month, payday),
        payday,
        book.Household.Start,
        PotUnit.Of(pot, book.Household.Settings.Cash)).Fill;
}
