using NodaTime;
using Payday.Core.Faults;

namespace Payday.Core.Calendar;

/// <summary>Why no pay period is known.</summary>
public abstract record PeriodFault : Fault
{
    /// <summary>No payday is known on or before a date.</summary>
    /// <param name="Date">The date.</param>
    public sealed record NoPaydayUpTo(LocalDate Date) : PeriodFault;

    /// <summary>No payday is known after a date.</summary>
    /// <param name="Date">The date.</param>
    public sealed record NoPaydayAfter(LocalDate Date) : PeriodFault;
}
