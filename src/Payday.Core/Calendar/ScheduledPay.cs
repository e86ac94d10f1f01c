using NodaTime;
using Payday.Core.Ids;

namespace Payday.Core.Calendar;

/// <summary>One pay of a source that is there on a payday.</summary>
/// <param name="SourceId">The source.</param>
/// <param name="Scheduled">The date by its schedule alone, before any move.</param>
public readonly record struct ScheduledPay(SourceId SourceId, LocalDate Scheduled);
