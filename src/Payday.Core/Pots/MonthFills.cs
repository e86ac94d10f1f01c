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
/// <param name="Lacking">What the month lacks before it, zero or more.</param>
/// <param name="AsPlanned">Whether the paydays before it put in just their shares.</param>
/// <param name="Index">Which of the sharing paydays it is, 0 for the first; below zero for an extra one.</param>
/// <param name="Count">How many paydays share the month.</param>
internal readonly record struct MonthShare(Money Fill, Money Lacking, bool AsPlanned, int Index, int Count)
{
    /// <summary>The part of a payday.</summary>
    /// <param name="amount">The month's amount.</param>
    /// <param name="spread">Whether extra paydays share it too.</param>
    /// <param name="month">The month, and what it has so far.</param>
    /// <param name="payday">The payday, one of the month's.</param>
    /// <param name="start">When the household began: shares of earlier paydays are not owed.</param>
    /// <param name="unit">What shares are whole numbers of; the last one is exact.</param>
    /// <remarks>
    /// Rule (design, 5.11): what the month lacks over the usual paydays that it still has. An extra payday takes what
    /// was missed: what the month lacks beyond the shares of the usual ones to come.
    /// </remarks>
    public static MonthShare Of(Money amount, bool spread, MonthFills month, LocalDate payday, LocalDate start, Money unit)
    {
        ImmutableArray<LocalDate> sharing = spread ? month.Paydays.All : month.Paydays.Usual;
        Money before = Planned(day => start <= day && day < payday);
        Money after = Planned(day => start <= day && day > payday);
        int index = sharing.IndexOf(payday);
        Money own = Planned(day => start <= day && day == payday);
        Money lacking = (before + own + after - month.SoFar).ClampToZero();
        Money fill = index < 0
            ? (lacking - after).ClampToZero()
            : LevelShares.ExactShare(lacking, sharing.Length - index, 0, unit);
        return new MonthShare(fill, lacking, month.SoFar == before, index, sharing.Length);

        Money Planned(Func<LocalDate, bool> counts) => Money.Sum(
            sharing.Select((day, i) => (day, i)).Where(share => counts(share.day)).Select(share => LevelShares.ExactShare(amount, sharing.Length, share.i, unit)),
            amount.Currency);
    }
}
