using Payday.Store.Files;

namespace Payday.Store.Backups;

/// <summary>Why a backup could not be made; what is entered is stored all the same. One of the nested cases.</summary>
public abstract record BackupFault : StoreFault
{
    private BackupFault()
    {
    }

    /// <summary>In the place of the folder for it is a link that leads to nothing.</summary>
    /// <param name="Into">The folder.</param>
    public sealed record LinkToNothing(string Into) : BackupFault;

    /// <summary>In the place of the folder for it is something else.</summary>
    /// <param name="Into">The folder.</param>
    /// <param name="Kind">What is there.</param>
    public sealed record NoFolder(string Into, FileKind Kind) : BackupFault;

    /// <summary>The system doesn't let it be written.</summary>
    /// <param name="Into">The folder.</param>
    /// <param name="Trouble">Why, as far as that is known.</param>
    public sealed record NotWritten(string Into, Trouble Trouble) : BackupFault;

    /// <summary>What comes back from the disk is not what was written.</summary>
    /// <param name="Into">The folder.</param>
    public sealed record ComesBackDifferent(string Into) : BackupFault;

    /// <summary>Nothing is stored yet.</summary>
    /// <param name="Path">The data folder.</param>
    public sealed record NothingYet(string Path) : BackupFault;

    /// <summary>The journal that it would be a copy of is damaged.</summary>
    /// <param name="Journal">The journal.</param>
    /// <param name="After">The last change before the damage; null where it is damaged from its beginning.</param>
    public sealed record JournalDamaged(string Journal, ChangeMark? After) : BackupFault;
}
