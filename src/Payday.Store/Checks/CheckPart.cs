namespace Payday.Store.Checks;

/// <summary>A part of the store that is checked.</summary>
public enum CheckPart
{
    /// <summary>The journal.</summary>
    Journal,

    /// <summary>The database.</summary>
    Database,

    /// <summary>The snapshot.</summary>
    Snapshot,

    /// <summary>The ledger.</summary>
    Ledger,

    /// <summary>The slips of closed paydays.</summary>
    Slips,

    /// <summary>The backups.</summary>
    Backups,

    /// <summary>Who may read the files.</summary>
    Files,
}
