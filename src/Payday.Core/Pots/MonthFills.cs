using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.Pots;

/// <summary>A calendar month that a payday carries a part of, and what its earlier paydays put in a pot for it.</summary>
/// <param name="Paydays">The month's paydays.</param>
/// <param name="SoFar">The fills for this month before the payday, zero or more; neither moves nor spending.</param>
public sealed record MonthFills(MonthPaydays Paydays, Money SoFar);

/// <summary>The part of a month's amount that a payday carries.</summary>
/// <param name="Fill">What it puts in, zero or more.</param>
/// <param name="Amount">The month's amount, as it holds on the payday.</param>
/// <param name="Lacking">What the month lacks before it, zero or more.</param>
/// <param name="AsPlanned">Whether the paydays before it put in just their shares.</param>
/// <param name="Index">Which of the sharing paydays it is, 0 for the first; below zero for an extra one.</param>
/// <param name="Count">How many paydays share the month.</param>
internal readonly record struct MonthShare(Money Fill, Money Amount, Money Lacking, bool AsPlanned, int Index, int Count)
{
    /// <summary>The part of a payday.</summary>
    /// <param name="kind">The pot, whose amount is a month's.</param>
    /// <param name="month">The month, and what it has so far.</param>
    /// <param name="payday">The payday, one of the month's.</param>
    /// <param name="start">When the household began: shares of earlier paydays are not owed.</param>
    /// <param name="unit">What shares are whole numbers of; the last one is exact.</param>
    /// <remarks>
    /// Rule (design, 5.11): what the month lacks over the usual paydays that it still has. An extra payday takes what
    /// was missed: what the month lacks beyond the shares of the usual ones to come. Where the amount changes within the
    /// month each payday has its share of what holds on its own day, and of what was missed an even part; a payday that lies
    /// outside its month has that of the month's edge.
    /// </remarks>
    public static MonthShare Of(PotKind.Spending kind, MonthFills month, LocalDate payday, LocalDate start, Money unit)
    {
        ImmutableArray<LocalDate> sharing = kind.Per == FillPer.MonthSpread ? month.Paydays.All : month.Paydays.Usual;
        Money[] planned = [.. sharing.Select((day, i) => day < start ? Money.Zero(unit.Currency) : LevelShares.ExactShare(AmountOn(day), sharing.Length, i, unit))];
        int index = sharing.IndexOf(payday);
        Money before = Planned(day => day < payday);
        Money after = Planned(day => day > payday);
        Money own = index < 0 ? Money.Zero(unit.Currency) : planned[index];
        Money lacking = (before + own + after - month.SoFar).ClampToZero();
        Money fill = index < 0 ? (lacking - after).ClampToZero()
            : sharing.Skip(index).Select(AmountOn).Distinct().Count() == 1 ? Level(lacking)
            : before >= month.SoFar ? own + Level(before - month.SoFar)
            : (own - (month.SoFar - before)).ClampToZero();
        return new MonthShare(fill, AmountOn(payday), lacking, month.SoFar == before, index, sharing.Length);

        Money Level(Money amount) => LevelShares.ExactShare(amount, sharing.Length - index, 0, unit);

        Money Planned(Func<LocalDate, bool> counts) =>
            Money.Sum(planned.Where((_, i) => counts(sharing[i])), unit.Currency);

        Money AmountOn(LocalDate day)
        {
            DateInterval days = month.Paydays.Month.ToDateInterval();
            return kind.AmountOn(day < days.Start ? days.Start : day > days.End ? days.End : day);
        }
    }
}
