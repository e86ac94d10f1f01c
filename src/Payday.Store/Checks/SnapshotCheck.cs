using Payday.Store.Contents;
using Payday.Store.Journals;
using Payday.Store.Snapshots;

namespace Payday.Store.Checks;

/// <summary>Holds the snapshot against the journal up to the line it was made at.</summary>
internal static class SnapshotCheck
{
    public static IEnumerable<Finding> Of(StoreFolder folder, JournalScan journal) =>
        SnapshotFile.TryRead(folder) is { } snapshot && Line(journal, snapshot.Place) is { } line && !IsTrue(journal, snapshot)
            ? [new Finding("snapshot", $"{folder.Snapshot} is not what the journal came to.", line.ToString(), "Have it made anew with payday check --mend; journal and database are what counts.")]
            : [];

    private static JournalLine? Line(JournalScan journal, JournalPlace place) =>
        place.Number >= 1 && place.Number <= journal.Lines.Length && journal.Lines[(int)place.Number - 1] is var line && line.Sha == place.Sha
            ? line
            : null;

    private static bool IsTrue(JournalScan journal, Snapshot snapshot)
    {
        try
        {
            return StoredRecords.Of(journal.Content((int)snapshot.Place.Number)) is { } records
                && SnapshotFile.Packed(snapshot with { Records = records }).AsSpan().SequenceEqual(SnapshotFile.Packed(snapshot));
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            // The journal itself is wrong, which is told where it is checked.
            return true;
        }
    }
}
