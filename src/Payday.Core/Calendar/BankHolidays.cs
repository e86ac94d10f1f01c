using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using NodaTime;
using PublicHoliday;

namespace Payday.Core.Calendar;

/// <summary>The days on which the bank is open, by a household's holiday rules.</summary>
/// <remarks>
/// A value built from <see cref="HolidayRules"/>: the same rules always give the same answers. Years are
/// worked out when first asked for and then kept; any number of threads may ask at once. A rule set knows the
/// years 1 to 9999; outside them only weekends and the household's own dates are closed.
/// </remarks>
public sealed class BankHolidays
{
    private readonly PublicHolidayBase? set;
    private readonly FrozenSet<LocalDate> extra;
    private readonly ConcurrentDictionary<int, FrozenSet<LocalDate>> years = new();

    private BankHolidays(PublicHolidayBase? set, FrozenSet<LocalDate> extra)
    {
        this.set = set;
        this.extra = extra;
    }

    /// <summary>No bank holidays; weekends are closed still.</summary>
    public static BankHolidays None { get; } = From(HolidayRules.None);

    /// <summary>The open days of a household's rules.</summary>
    /// <param name="rules">A rule set and further dates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rule set is not one of <see cref="HolidaySet"/>.</exception>
    public static BankHolidays From(HolidayRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        PublicHolidayBase? set = rules.Set switch
        {
            HolidaySet.None => null,
            HolidaySet.UnitedStates => new USAPublicHoliday(),
            HolidaySet.EnglandAndWales => new UKBankHoliday(UKBankHoliday.UkCountries.England),
            HolidaySet.Target => new EcbTargetClosingDay(),
            _ => throw new ArgumentOutOfRangeException(nameof(rules), rules.Set, "There is no such holiday set."),
        };
        return new BankHolidays(set, rules.Extra.IsDefaultOrEmpty ? [] : rules.Extra.ToFrozenSet());
    }

    /// <summary>
    /// The dates of a calendar year that the rule set closes, as observed, and the household's own, in order.
    /// </summary>
    /// <remarks>A holiday of the next year that is observed in this one is among them.</remarks>
    public ImmutableArray<LocalDate> InYear(int year) =>
        [.. OfSet(year).Concat(extra.Where(date => date.Year == year)).Distinct().Order()];

    /// <summary>Whether a date is neither a Saturday or Sunday nor a bank holiday.</summary>
    public bool IsWorkingDay(LocalDate date) =>
        date.DayOfWeek < IsoDayOfWeek.Saturday && !extra.Contains(date) && !OfSet(date.Year).Contains(date);

    /// <summary>Where a date is moved if it falls on a day that is not a working day.</summary>
    /// <returns>The date itself if it is a working day or <paramref name="shift"/> is none.</returns>
    /// <exception cref="OverflowException">No working day is left before the calendar ends (year 9999).</exception>
    public LocalDate Shift(LocalDate date, Shift shift)
    {
        int step = shift switch
        {
            Calendar.Shift.None => 0,
            Calendar.Shift.Before => -1,
            Calendar.Shift.After => 1,
            _ => throw new ArgumentOutOfRangeException(nameof(shift), shift, "There is no such shift."),
        };
        while (step != 0 && !IsWorkingDay(date))
        {
            date = date.PlusDays(step);
        }

        return date;
    }

    private FrozenSet<LocalDate> OfSet(int year) =>
        set is null ? [] : years.GetOrAdd(year, static (year, set) => Observed(set, year), set);

    // A New Year's Day on a Saturday is observed on 31 December, so the next year has a say in this one.
    private static FrozenSet<LocalDate> Observed(PublicHolidayBase set, int year) =>
        Enumerable.Range(year, 2)
            .Where(listed => listed is >= 1 and <= 9999)
            .SelectMany(set.PublicHolidays)
            .Select(LocalDate.FromDateTime)
            .Where(date => date.Year == year)
            .ToFrozenSet();
}
