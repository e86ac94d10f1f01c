using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Drafts;

/// <summary>One check of a draft: what it found so far, and what the parts of the draft need of each other.</summary>
/// <remarks>
/// Each method either returns the value, or notes a fault and returns a harmless stand-in (zero, the first, an empty
/// text), so that the check goes on and finds all faults at once.
/// </remarks>
/// <param name="currency">The currency of every amount; null where it isn't known, and no amount has too many decimals then.</param>
public sealed class DraftCheck(Currency? currency)
{
    // Where the currency is not known, amounts are still looked at, with the most decimals that any has.
    private static readonly Currency MostDecimals = Currency.FromCode("CLF");

    private readonly List<DraftFault> faults = [];
    private readonly HashSet<DraftPlace> unsound = [];

    /// <summary>The currency of every amount; a stand-in where it isn't known.</summary>
    public Currency Currency { get; } = currency ?? MostDecimals;

    /// <summary>The start of the household; null where it isn't known.</summary>
    public LocalDate? Start { get; set; }

    /// <summary>The notes in use, largest first; empty where they aren't known.</summary>
    public ImmutableArray<Money> Notes { get; set; } = [];

    /// <summary>Whether names are taken as they are, see <see cref="HouseholdCheck.OfStored"/>.</summary>
    public bool TakesAnyName { get; init; }

    /// <summary>What was found, in the order in which it was.</summary>
    public IReadOnlyList<DraftFault> Faults => faults;

    /// <summary>Whether nothing was found at a place or inside it.</summary>
    public bool IsSound(DraftPlace place) => !unsound.Contains(place);

    /// <summary>Notes a fault.</summary>
    public void Refuse(DraftFault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        faults.Add(fault);
        DraftPlace around = DraftPlace.Whole;
        unsound.Add(around);
        foreach (DraftStep step in fault.Place.Steps)
        {
            unsound.Add(around.Then(step.Member));
            around = around.Then(step.Member, step.Item);
            unsound.Add(around);
        }
    }

    /// <summary>A value that must be there.</summary>
    public T Needed<T>(T? value, DraftPlace place, T standIn)
        where T : struct
    {
        if (value is null)
        {
            Refuse(new DraftFault.Missing(place));
        }

        return value ?? standIn;
    }

    /// <summary>A part that must be there.</summary>
    public bool IsThere(object? part, DraftPlace place)
    {
        if (part is null)
        {
            Refuse(new DraftFault.Missing(place));
        }

        return part is not null;
    }

    /// <summary>An amount of zero or more that must be there.</summary>
    public Money Amount(decimal? value, DraftPlace place) => IsThere(value, place) ? Taken(value!.Value, place) : Money.Zero(Currency);

    /// <summary>An amount that may be below zero and must be there.</summary>
    public Money AnyAmount(decimal? value, DraftPlace place) => value is < 0 ? -Taken(-value.Value, place) : Amount(value, place);

    /// <summary>An amount of zero or more, or none.</summary>
    public Money? AmountOrNone(decimal? value, DraftPlace place) => value is { } there ? Taken(there, place) : null;

    /// <summary>An amount above zero that must be there.</summary>
    public Money AmountAboveZero(decimal? value, DraftPlace place)
    {
        Money amount = Amount(value, place);
        if (value is 0)
        {
            Refuse(new DraftFault.AmountZero(place));
        }

        return amount;
    }

    /// <summary>A whole number that must be there.</summary>
    public int Count(int? value, int least, int most, DraftPlace place)
    {
        int count = Needed(value, place, least);
        if (count >= least && count <= most)
        {
            return count;
        }

        Refuse(new DraftFault.CountOutside(place, count, least, most));
        return least;
    }

    /// <summary>A fraction that must be there.</summary>
    /// <param name="value">The fraction.</param>
    /// <param name="highest">The most it may be; the least is 0.</param>
    /// <param name="place">Where it stands.</param>
    public decimal Rate(decimal? value, int highest, DraftPlace place)
    {
        decimal rate = Needed(value, place, 0);
        DraftFault? fault =
            rate < 0 ? new DraftFault.RateBelowZero(place, rate)
            : rate.Scale > HouseholdLimits.RateDecimals ? new DraftFault.RateTooFine(place, rate, HouseholdLimits.RateDecimals)
            : rate > highest ? new DraftFault.RateTooHigh(place, rate, highest)
            : null;
        if (fault is null)
        {
            return rate;
        }

        Refuse(fault);
        return 0;
    }

    /// <summary>A line of text that must be there, without blanks around it.</summary>
    public string Line(string? value, DraftPlace place)
    {
        if (!IsThere(value, place))
        {
            return "";
        }

        if (LineRule.Fault(value!, HouseholdLimits.LongestName, place) is { } fault)
        {
            Refuse(fault);
        }

        return value!;
    }

    /// <summary>A date that must be there.</summary>
    public LocalDate Date(LocalDate? value, DraftPlace place)
    {
        LocalDate date = Needed(value, place, new LocalDate(HouseholdLimits.FirstYear, 1, 1));
        if (!DateRule.IsNear(date.Year))
        {
            Refuse(new DraftFault.DateTooFar(place, date));
        }

        return date;
    }

    /// <summary>A date from the start on, at most a hundred years after it, that must be there.</summary>
    public LocalDate LaterDate(LocalDate? value, DraftPlace place)
    {
        LocalDate date = Date(value, place);
        DraftFault? fault =
            value is null || !IsSound(place) || Start is not { } start ? null
            : date < start ? new DraftFault.DateBeforeStart(place, date, start)
            : date > start.PlusYears(HouseholdLimits.MostYears) ? new DraftFault.DateTooLate(place, date, HouseholdLimits.MostYears)
            : null;
        if (fault is not null)
        {
            Refuse(fault);
        }

        return date;
    }

    /// <summary>A date from the start on, at most a hundred years after it, or none.</summary>
    public LocalDate? LaterDateOrNone(LocalDate? value, DraftPlace place) => value is null ? null : LaterDate(value, place);

    /// <summary>Dates, in their order.</summary>
    public ImmutableArray<LocalDate> Dates(ImmutableArray<LocalDate> dates, DraftMember member, DraftPlace of)
    {
        NotTooMany(dates.Length, HouseholdLimits.MostDates, of.Then(member));
        return [.. dates.Select((date, i) => Date(date, of.Then(member, i)))];
    }

    /// <summary>That a list isn't too long.</summary>
    public void NotTooMany(int count, int most, DraftPlace place)
    {
        if (count > most)
        {
            Refuse(new DraftFault.TooMany(place, count, most));
        }
    }

    private Money Taken(decimal value, DraftPlace place)
    {
        decimal whole = decimal.Truncate(value);
        decimal parts = (value - whole) * Currency.MinorPerUnit;
        DraftFault? fault =
            value < 0 ? new DraftFault.AmountBelowZero(place, value)
            : whole > long.MaxValue / Currency.MinorPerUnit ? new DraftFault.AmountTooLarge(place)
            : parts != decimal.Truncate(parts) ? new DraftFault.AmountTooFine(place, Currency)
            : (whole * Currency.MinorPerUnit) + parts > long.MaxValue ? new DraftFault.AmountTooLarge(place)
            : null;
        if (fault is null)
        {
            return Money.FromMinorUnits((long)((whole * Currency.MinorPerUnit) + parts), Currency);
        }

        Refuse(fault);
        return Money.Zero(Currency);
    }
}
