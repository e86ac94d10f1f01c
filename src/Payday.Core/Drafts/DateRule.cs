namespace Payday.Core.Drafts;

/// <summary>Which dates are near enough to be meant.</summary>
public static class DateRule
{
    /// <summary>Whether a year is from 1900 to 2199.</summary>
    public static bool IsNear(int year) => year is >= HouseholdLimits.FirstYear and <= HouseholdLimits.LastYear;
}
