using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Snapshots;

namespace Payday.Store.Checks;

/// <summary>Holds the snapshot against the journal up to the line it was made at.</summary>
internal static class SnapshotCheck
{
    /// <summary>The line at which it is not what the journal came to; null where it is, or is of another journal and so passed over.</summary>
    public static JournalLine? Differing(StoreFolder folder, JournalScan journal) =>
        SnapshotFile.TryRead(folder) is { } snapshot && Line(journal, snapshot.Place) is { } line && snapshot.Differs(journal.Lines) ? line : null;

    private static JournalLine? Line(JournalScan journal, JournalPlace place) =>
        place.Number >= 1 && place.Number <= journal.Lines.Length && journal.Lines[(int)place.Number - 1] is var line && line.Sha == place.Sha
            ? line
            : null;
}
