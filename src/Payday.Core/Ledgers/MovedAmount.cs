using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>What a movement moved: for who goes through all of them, of which none is made for it.</summary>
/// <param name="Number">The number of the movement.</param>
/// <param name="Date">The day on which it happened.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="To">Where it goes.</param>
/// <param name="Amount">More than zero.</param>
public readonly record struct MovedAmount(long Number, LocalDate Date, LedgerEnd From, LedgerEnd To, Money Amount);
