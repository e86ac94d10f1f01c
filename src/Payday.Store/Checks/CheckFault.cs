using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Store.Backups;
using Payday.Store.Files;

namespace Payday.Store.Checks;

/// <summary>What a check finds beyond what refuses an opening. One of the nested cases.</summary>
public abstract record CheckFault : StoreFault
{
    private CheckFault()
    {
    }

    /// <summary>The journal's end is damaged.</summary>
    /// <param name="Journal">The journal.</param>
    /// <param name="Bytes">How many bytes of it.</param>
    public sealed record JournalEndDamaged(string Journal, long Bytes) : CheckFault;

    /// <summary>The journal is missing.</summary>
    /// <param name="Journal">The journal.</param>
    public sealed record JournalMissing(string Journal) : CheckFault;

    /// <summary>Journal and database don't end with the same change.</summary>
    /// <param name="Journal">The journal.</param>
    /// <param name="Last">Its last change; null where it has none.</param>
    /// <param name="OfDatabase">That of the database.</param>
    public sealed record EndsDiffer(string Journal, ChangeMark? Last, ChangeMark? OfDatabase) : CheckFault;

    /// <summary>The snapshot is not what the journal came to.</summary>
    /// <param name="Snapshot">The snapshot.</param>
    public sealed record SnapshotDiffers(string Snapshot) : CheckFault;

    /// <summary>A backup is none.</summary>
    /// <param name="Path">The file.</param>
    /// <param name="Why">Why.</param>
    public sealed record NoBackup(string Path, BackupUnfit Why) : CheckFault;

    /// <summary>Others can read a file.</summary>
    /// <param name="Path">The file.</param>
    public sealed record OpenToOthers(string Path) : CheckFault;

    /// <summary>What is stored makes no book.</summary>
    public sealed record NoBook : CheckFault;

    /// <summary>Something is below zero that may not be.</summary>
    /// <param name="Fault">What.</param>
    /// <param name="Style">How the household writes numbers.</param>
    public sealed record BelowZero(LedgerFault Fault, NumberStyle Style) : CheckFault;

    /// <summary>A closed payday names movements that are none.</summary>
    /// <param name="Payday">Its day.</param>
    /// <param name="First">The first that it names.</param>
    /// <param name="Last">The last.</param>
    public sealed record NoSuchMovements(LocalDate Payday, long First, long Last) : CheckFault;

    /// <summary>The notes of a slip are not what went into the pots.</summary>
    /// <param name="Payday">The day of the payday.</param>
    /// <param name="Notes">What the slip and the notes used again come to.</param>
    /// <param name="Pots">What went into the pots.</param>
    /// <param name="Style">How the household writes numbers.</param>
    public sealed record SlipDiffers(LocalDate Payday, Money Notes, Money Pots, NumberStyle Style) : CheckFault;

    /// <summary>A filling sheet puts another amount into a pot than the ledger moved there.</summary>
    /// <param name="Payday">The day of the payday.</param>
    /// <param name="Pot">The pot's name, or its id where the household has it no more.</param>
    /// <param name="OnSheet">What the sheet puts into it.</param>
    /// <param name="Moved">What the ledger moved there.</param>
    /// <param name="Style">How the household writes numbers.</param>
    public sealed record SheetDiffers(LocalDate Payday, string Pot, Money OnSheet, Money Moved, NumberStyle Style) : CheckFault;
}
