using NodaTime;

namespace Payday.Store.Fields;

/// <summary>A day as one number above 0: the year in what is above 9 bits, then 4 bits of month and 5 of day.</summary>
internal static class PackedDate
{
    // So that no year of the calendar is below 0.
    private const int YearZero = 10_000;

    public static int Of(LocalDate date) => ((date.Year + YearZero) << 9) | (date.Month << 5) | date.Day;

    public static LocalDate To(int packed) => new((packed >> 9) - YearZero, (packed >> 5) & 0xF, packed & 0x1F);
}
