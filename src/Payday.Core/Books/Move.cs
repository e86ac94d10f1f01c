using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>Money taken from one purpose to another (design, rule 12).</summary>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Date">The day.</param>
/// <param name="From">The purpose that gives it, with its place.</param>
/// <param name="To">The purpose that gets it, with its place, or the debt that it is paid on.</param>
/// <param name="Amount">More than zero.</param>
/// <param name="Why">In a few words; may be empty.</param>
/// <param name="Notes">The notes that moved, where cash moved and they are known; null else.</param>
/// <param name="FirstMovement">The number of its first movement, after those of what it took up.</param>
/// <param name="LastMovement">The number of its last movement.</param>
public sealed record Move(
    long Number,
    LocalDate Date,
    LedgerEnd From,
    LedgerEnd To,
    Money Amount,
    string Why,
    Notes? Notes,
    long FirstMovement,
    long LastMovement)
{
    /// <summary>Whether it was undone; its movements then have their reverses.</summary>
    public bool Undone { get; init; }

    /// <summary>What was taken as being in the wallet when it was entered; see <c>WalletFills</c>.</summary>
    public TakenUp TakenUp { get; init; } = TakenUp.Nothing;
}
