using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Debts;

/// <summary>A minimum that was paid though one that is due before it wasn't.</summary>
/// <param name="Due">Its due date.</param>
/// <param name="Amount">What was paid on it, zero or more.</param>
public readonly record struct PaidAhead(LocalDate Due, Money Amount);
