using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>An amount that goes from one end to another. Never edited: a mistake is undone by its reverse.</summary>
/// <param name="Number">1 for the first in the ledger, then without a gap.</param>
/// <param name="Date">The day on which it happened.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="To">Where it goes; another end than <paramref name="From"/>.</param>
/// <param name="Amount">More than zero.</param>
/// <param name="Reason">Why, in a few words.</param>
/// <param name="Payday">The payday it belongs to, or null.</param>
/// <param name="Reverses">The number of the movement that this one undoes, or null.</param>
public sealed record Movement(
    long Number,
    LocalDate Date,
    LedgerEnd From,
    LedgerEnd To,
    Money Amount,
    string Reason,
    LocalDate? Payday = null,
    long? Reverses = null);
