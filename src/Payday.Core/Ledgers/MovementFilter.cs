using Payday.Core.Calendar;

namespace Payday.Core.Ledgers;

/// <summary>Which movements are looked at.</summary>
/// <param name="Subject">Only those about this, or null for all.</param>
/// <param name="Dates">Only those of these days, or null for all.</param>
public sealed record MovementFilter(LedgerSubject? Subject = null, DateSpan? Dates = null)
{
    /// <summary>Whether a movement is looked at.</summary>
    public bool Takes(Movement movement)
    {
        ArgumentNullException.ThrowIfNull(movement);
        return (Dates is not { } dates || dates.Has(movement.Date)) && (Subject is not { } subject || subject.IsIn(movement));
    }
}
