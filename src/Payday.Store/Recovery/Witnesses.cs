using System.Collections.Immutable;
using System.Globalization;
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
    /// <returns>A sentence; null where nothing does.</returns>
    public string? Contradiction(JournalLine? known) =>
        (known is null || IsStoredHere(known) ? null : Of("The database", known.Number, known.Sha)) ?? OfBackups() ?? OfSnapshot();

    /// <summary>Where the snapshot is, if that is beyond what is known otherwise; else null.</summary>
    public static JournalPlace? SnapshotBeyond(StoreFolder folder, JournalLine? end) =>
        SnapshotFile.TryRead(folder)?.Place is { } place && place.Number > (end?.Number ?? 0) ? place : null;

    private JournalLine Last => lines[^1];

    // Begun on what was stored then: what came before is not in it, and numbers start anew.
    private bool IsBegunAnew => lines[0].Of > 0;

    private bool Holds(long number, string sha) => number >= 1 && number <= lines.Length && lines[(int)number - 1].Sha == sha;

    // Under another number where the journal was begun anew and the database was not told yet.
    private bool IsStoredHere(JournalLine known) => lines.Any(line => line.Digest == known.Digest);

    private string? Of(string who, long number, string sha) =>
        Holds(number, sha) ? null
        : number > Last.Number ? string.Create(CultureInfo.InvariantCulture, $"{who} goes on to change {number}.")
        : string.Create(CultureInfo.InvariantCulture, $"{who} has another change {number} than the journal.");

    private string? OfBackups()
    {
        foreach (BackupFile file in BackupFiles.List(folder.Backups).Where(file => !file.IsOfAnother(Last.Book)))
        {
            if (BackupFiles.TryRead(file.Path) is { } backup && !BookName.Differ(backup.Last!.Book, Last.Book) && !IsOfBefore(backup)
                && Of($"The backup {Path.GetFileName(file.Path)}", backup.Last.Number, backup.Last.Sha) is { } told)
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

    private string? OfSnapshot()
    {
        if (SnapshotFile.TryRead(folder) is not { } snapshot)
        {
            return null;
        }

        return Of("The snapshot", snapshot.Place.Number, snapshot.Place.Sha)
            ?? (!snapshot.Differs(lines) ? null : string.Create(CultureInfo.InvariantCulture, $"The snapshot holds something else than the journal came to at change {snapshot.Place.Number}."));
    }
}
