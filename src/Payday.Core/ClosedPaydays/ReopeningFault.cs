using NodaTime;
using Payday.Core.Faults;
using Payday.Core.Ledgers;

namespace Payday.Core.ClosedPaydays;

/// <summary>Why no payday can be reopened, beside what was written since.</summary>
public abstract record ReopeningFault : Fault
{
    /// <summary>No payday has been closed yet.</summary>
    public sealed record NoneClosed : ReopeningFault;

    /// <summary>The ledger would not hold without the payday.</summary>
    /// <param name="Payday">The payday.</param>
    /// <param name="Why">What would not hold.</param>
    public sealed record Unsound(LocalDate Payday, LedgerFault Why) : ReopeningFault;
}
