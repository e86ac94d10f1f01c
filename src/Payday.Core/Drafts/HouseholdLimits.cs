using Payday.Core.Households;

namespace Payday.Core.Drafts;

/// <summary>How much a household holds at most; what a file, a form and a calculator say of it is taken from here.</summary>
public static class HouseholdLimits
{
    /// <summary>The most characters (Unicode scalar values) of a name or a line; the least is 1.</summary>
    public const int LongestName = 60;

    /// <summary>The most characters of an id.</summary>
    public const int LongestId = 60;

    /// <summary>The most sources, bills, debts or pots.</summary>
    public const int MostItems = 500;

    /// <summary>The most values of notes or coins.</summary>
    public const int MostPieces = 30;

    /// <summary>The most notes of one value.</summary>
    public const int MostOfOneNote = 1_000_000;

    /// <summary>The most weeks from one time to the next.</summary>
    public const int MostWeeks = 520;

    /// <summary>The most months from one time to the next.</summary>
    public const int MostMonths = 120;

    /// <summary>The most dates of a list.</summary>
    public const int MostDates = 500;

    /// <summary>The most times that an amount changes.</summary>
    public const int MostChanges = 100;

    /// <summary>The most steps of a ladder.</summary>
    public const int MostSteps = 1_000;

    /// <summary>The highest rank of a pot; the lowest is 1.</summary>
    public const int HighestRank = 10_000;

    /// <summary>The highest yearly rate, a fraction: 1,000 %.</summary>
    public const int HighestRate = 10;

    /// <summary>The highest part of a debt that a minimum can be, a fraction.</summary>
    public const int HighestPart = 1;

    /// <summary>The most decimals of a rate or part, a fraction.</summary>
    public const int RateDecimals = 6;

    /// <summary>The most lines at the top of a slip.</summary>
    public const int MostSlipLines = 6;

    /// <summary>The first year that a date may have.</summary>
    public const int FirstYear = 1900;

    /// <summary>The last year that a date may have.</summary>
    public const int LastYear = 2199;

    /// <inheritdoc cref="Household.MostYears"/>
    public const int MostYears = Household.MostYears;

    /// <summary>The most that all amounts come to, in minor units: room for a thousand paydays before a sum leaves 64 bits.</summary>
    public const long LargestTotal = long.MaxValue / 1_000;
}
