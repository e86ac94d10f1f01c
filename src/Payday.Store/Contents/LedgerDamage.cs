using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Store.Files;

namespace Payday.Store.Contents;

/// <summary>What is wrong with a stored ledger; nothing was changed. One of the nested cases.</summary>
/// <param name="Path">The data folder.</param>
public abstract record LedgerDamage(string Path) : StoreFault
{
    /// <summary>It doesn't add up.</summary>
    /// <param name="Path">The data folder.</param>
    /// <param name="Fault">What doesn't.</param>
    /// <param name="Style">How its household writes numbers.</param>
    public sealed record DoesNotAddUp(string Path, LedgerFault Fault, NumberStyle Style) : LedgerDamage(Path);

    /// <summary>A movement is missing.</summary>
    /// <param name="Path">The data folder.</param>
    /// <param name="Number">Its number.</param>
    public sealed record MovementMissing(string Path, int Number) : LedgerDamage(Path);
}
