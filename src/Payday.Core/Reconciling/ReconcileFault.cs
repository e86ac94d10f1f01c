using NodaTime;
using Payday.Core.Faults;

namespace Payday.Core.Reconciling;

/// <summary>Why a reconciliation can't be so.</summary>
public abstract record ReconcileFault : Fault
{
    /// <summary>The bank's balance isn't there.</summary>
    public sealed record NoBalance : ReconcileFault;

    /// <summary>There is no account line of that number that the bank hasn't shown yet.</summary>
    /// <param name="Number">The number.</param>
    public sealed record NoSuchLine(long Number) : ReconcileFault;

    /// <summary>Its day is before the household's first.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Start">The household's first.</param>
    public sealed record BeforeStart(LocalDate Date, LocalDate Start) : ReconcileFault;

    /// <summary>Its day is before that of the last one.</summary>
    /// <param name="Date">The day.</param>
    /// <param name="Last">The day of the last one.</param>
    public sealed record BeforeLast(LocalDate Date, LocalDate Last) : ReconcileFault;
}
