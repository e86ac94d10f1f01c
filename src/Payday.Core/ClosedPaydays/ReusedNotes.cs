using Payday.Core.Amounts;
using Payday.Core.Ledgers;

namespace Payday.Core.ClosedPaydays;

/// <summary>Loose notes that a closing puts in pots.</summary>
public static class ReusedNotes
{
    /// <summary>What pots give the account's buffer for loose notes that were no pot's; null where the closing moved nothing.</summary>
    /// <param name="written">What the closing wrote.</param>
    public static Money? ToBuffer(IEnumerable<Movement> written)
    {
        ArgumentNullException.ThrowIfNull(written);
        LedgerEnd buffer = LedgerEnd.InAccount(Purpose.Buffer);
        return written
            .Where(movement => movement.To == buffer && movement.From is LedgerEnd.At { Place: Place.Account, Purpose.Kind: PurposeKind.KeptBack })
            .Aggregate((Money?)null, (sum, movement) => sum is { } before ? before + movement.Amount : movement.Amount);
    }
}
