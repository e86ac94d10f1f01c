using NodaTime;
using Payday.Core.Faults;
using Payday.Core.Ids;

namespace Payday.Core.Routines;

/// <summary>Why what the person says of a sinking pot can't be.</summary>
public abstract record SinkingFault : Fault
{
    /// <summary>There is no such pot.</summary>
    /// <param name="PotId">Its id.</param>
    public sealed record NoSuchPot(PotId PotId) : SinkingFault;

    /// <summary>The pot has no target by a date.</summary>
    /// <param name="Pot">What the person calls it.</param>
    public sealed record NoTarget(string Pot) : SinkingFault;

    /// <summary>No payday comes by the date any more.</summary>
    /// <param name="Date">The date.</param>
    /// <param name="Payday">The next payday, the first date that can be.</param>
    public sealed record NoPaydayBy(LocalDate Date, LocalDate Payday) : SinkingFault;

    /// <summary>The date is too far off to be meant.</summary>
    /// <param name="Date">The date.</param>
    /// <param name="Years">How many years off it may be.</param>
    public sealed record TooFarOff(LocalDate Date, int Years) : SinkingFault;
}
