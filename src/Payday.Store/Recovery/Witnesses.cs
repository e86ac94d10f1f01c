using System.Collections.Immutable;
using Payday.Store.Backups;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Snapshots;

namespace Payday.Store.Recovery;

/// <summary>What else in a folder knows of its past: a database that is damaged, the backups, the snapshot.</summary>
/// <param name="folder">The folder.</param>
/// <param name="lines">The journal as it would be kept, at least one line.</param>
internal sealed class Witnesses(StoreFolder folder, ImmutableArray<JournalLine> lines)
{
    /// <summary>What speaks against taking the journal for all there is.</summary>
    /// <param name="known">The last line that the database had; null where that is not known.</param>
    /// <returns>It; null where nothing does.</returns>
    public Contradiction? Against(JournalLine? known) =>
        (known is null || IsStoredHere(known) ? null : Of(new Witness.Database(), known.Number, known.Sha)) ?? OfBackups() ?? OfSnapshot();

    /// <summary>Where the snapshot is, if that is beyond what is known otherwise; else null.</summary>
    public static JournalPlace? SnapshotBeyond(StoreFolder folder, JournalLine? end) =>
        SnapshotFile.TryRead(folder)?.Place is { } place && place.Number > (end?.Number ?? 0) ? place : null;

    private JournalLine Last => lines[^1];

    // Begun on what was stored then: what came before is not in it, and numbers start anew.
    private bool IsBegunAnew => lines[0].Of > 0;

    private bool Holds(long number, string sha) => number >= 1 && number <= lines.Length && lines[(int)number - 1].Sha == sha;

    // Under another number where the journal was begun anew and the database was not told yet.
    private bool IsStoredHere(JournalLine known) => lines.Any(line => line.Digest == known.Digest);

    private Contradiction? Of(Witness who, long number, string sha) =>
        Holds(number, sha) ? null
        : number > Last.Number ? new Contradiction.GoesOn(who, number)
        : new Contradiction.HasAnother(who, number);

    private Contradiction? OfBackups()
    {
        foreach (BackupFile file in BackupFiles.List(folder.Backups).Where(file => !file.IsOfAnother(Last.Book)))
        {
            if (BackupFiles.TryRead(file.Path) is { } backup && !BookName.Differ(backup.Last!.Book, Last.Book) && !IsOfBefore(backup)
                && Of(new Witness.Backup(Path.GetFileName(file.Path)), backup.Last.Number, backup.Last.Sha) is { } told)
            {
                // A person who went back, or a mending that said so, left what was there aside.
                if (backup.Lines.Any(line => line.Sha == Last.Sha) || !AsideFiles.Hold(folder, backup.Last))
                {
                    return told;
                }
            }
        }

        return null;
    }

    private bool IsOfBefore(JournalScan backup) => IsBegunAnew && backup.Lines[0].Sha != lines[0].Sha;

    private Contradiction? OfSnapshot()
    {
        if (SnapshotFile.TryRead(folder) is not { } snapshot)
        {
            return null;
        }

        return Of(new Witness.Snapshot(), snapshot.Place.Number, snapshot.Place.Sha)
            ?? (!snapshot.Differs(lines) ? null : new Contradiction.SnapshotDiffers(snapshot.Place.Number));
    }
}
