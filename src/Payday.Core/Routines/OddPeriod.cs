using NodaTime;
using Payday.Core.Calendar;
using Payday.Core.Faults;

namespace Payday.Core.Routines;

/// <summary>What is different about a pay period, so that the routine proposes something else for it.</summary>
public abstract record OddPeriod : Fault
{
    /// <summary>Paydays before it were not closed.</summary>
    /// <param name="Count">How many, 1 or more.</param>
    /// <param name="First">The first of them.</param>
    public sealed record Missed(int Count, LocalDate First) : OddPeriod;

    /// <summary>The pay comes on another day than its schedule says.</summary>
    /// <param name="Source">What the person calls who pays.</param>
    /// <param name="Scheduled">The day of the schedule.</param>
    /// <param name="Period">The period that it has to last for; it comes on the first day.</param>
    public sealed record Moved(string Source, LocalDate Scheduled, PayPeriod Period) : OddPeriod;

    /// <summary>A payday beyond the usual count of its month.</summary>
    /// <param name="Number">Which of the month's, from 1.</param>
    /// <param name="Month">The month.</param>
    public sealed record Extra(int Number, YearMonth Month) : OddPeriod;

    /// <summary>More or fewer fill days than usual, or none.</summary>
    /// <param name="Count">How many.</param>
    /// <param name="Usual">How many are usual.</param>
    /// <param name="FillDay">The weekday on which the wallet is filled.</param>
    public sealed record FillDays(int Count, int Usual, IsoDayOfWeek FillDay) : OddPeriod;

    /// <summary>The first week is filled on the payday itself, which is not usual.</summary>
    public sealed record FillOnPayday : OddPeriod;

    /// <summary>The next payday is less than a week away, which is not usual.</summary>
    /// <param name="Period">The period.</param>
    public sealed record Short(PayPeriod Period) : OddPeriod;

    /// <summary>A week of it lies in two years.</summary>
    /// <param name="Week">Its fill day.</param>
    public sealed record YearEnd(LocalDate Week) : OddPeriod;

    /// <summary>The first payday of its year.</summary>
    /// <param name="Year">The year.</param>
    /// <param name="Before">The payday before it.</param>
    public sealed record YearStart(int Year, LocalDate Before) : OddPeriod;
}
