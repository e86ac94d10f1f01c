using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Calendar;

/// <summary>What an amount of a household is from a date on.</summary>
/// <param name="From">The first day on which it holds.</param>
/// <param name="Amount">Zero or more.</param>
public readonly record struct LaterAmount(LocalDate From, Money Amount);
