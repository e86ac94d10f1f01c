using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ledgers;

namespace Payday.Core.Moves;

/// <summary>A move to be entered.</summary>
/// <param name="Date">The day.</param>
/// <param name="From">The purpose that gives the money, with its place; a pot in cash stands for its wallet and for what it has at home.</param>
/// <param name="To">The purpose that gets it, with its place, or the debt that it is paid on.</param>
/// <param name="Amount">Above zero.</param>
/// <param name="Why">In a few words; may be empty.</param>
/// <param name="Notes">The notes that change hands, by value in minor units; null where they aren't known, or no cash does.</param>
public sealed record MoveEntry(LocalDate Date, LedgerEnd From, LedgerEnd To, Money Amount, string Why, Notes? Notes = null)
{
    /// <summary>Whether the bank shows it already, so that cash was fetched or brought on that day, whatever its notes; true changes nothing within a place.</summary>
    public bool IsAtBank { get; init; }
}
