using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ledgers;

namespace Payday.Core.Pots;

/// <summary>The smallest amount that a pot's money comes in.</summary>
public static class PotUnit
{
    /// <summary>
    /// For a cash pot the smallest note in use that is not above its top note; for the account one minor unit.
    /// </summary>
    /// <remarks>
    /// A top note below every note in use can't be kept; the smallest note stands in, and planning
    /// the notes names the wish that can't be met.
    /// </remarks>
    public static Money Of(Pot pot, CashPieces pieces)
    {
        ArgumentNullException.ThrowIfNull(pot);
        ArgumentNullException.ThrowIfNull(pieces);

        // No note is smaller than the smallest, so a top note only matters when it is below that one.
        return pot.Place == Place.Cash
            ? pieces.SmallestNote
            : Money.FromMinorUnits(1, pieces.SmallestNote.Currency);
    }
}
