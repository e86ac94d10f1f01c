using Payday.Store.Journals;

namespace Payday.Store.Backups;

/// <summary>What became of reading a backup. One of the nested cases.</summary>
internal abstract record BackupReading
{
    private BackupReading()
    {
    }

    /// <summary>It is whole.</summary>
    /// <param name="Journal">The journal that it is a copy of, with at least one line.</param>
    public sealed record Sound(JournalScan Journal) : BackupReading;

    /// <summary>It is none.</summary>
    /// <param name="Why">Why.</param>
    public sealed record Unfit(BackupUnfit Why) : BackupReading;
}
