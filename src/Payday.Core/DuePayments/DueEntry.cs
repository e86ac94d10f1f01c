using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;

namespace Payday.Core.DuePayments;

/// <summary>A due as the person ticks it.</summary>
/// <param name="Key">Which.</param>
/// <param name="Date">The day on which it left the account.</param>
/// <param name="Amount">How much did; null for all that was to be paid. Zero only where the rest is freed: it is waived then.</param>
/// <param name="FreesRest">Whether what is left of it needs no more money.</param>
public sealed record DueEntry(DueKey Key, LocalDate Date, Money? Amount = null, bool FreesRest = false);
