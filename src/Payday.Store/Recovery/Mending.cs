using System.Collections.Immutable;
using Payday.Store.Backups;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>Brings database and journal of a folder back together, each from the other, or says why it can't be decided.</summary>
/// <remarks>
/// A change is synced to the journal first, to the database second, and acknowledged third. So a line that the
/// database has was acknowledged or about to be, and a last line that is not whole was never acknowledged where a
/// sound database doesn't have it. Whatever is taken from its place is kept in <see cref="StoreFolder.Aside"/>.
/// </remarks>
internal static class Mending
{
    /// <summary>Mends a folder whose lock is held.</summary>
    /// <returns>What was wrong and was done; none where there was nothing to tell.</returns>
    /// <exception cref="StoreException">It can't be decided, or not be done; nothing was changed.</exception>
    public static ImmutableArray<StoreFault> Mend(StoreFolder folder) => Decide(folder, JournalScan.Read(folder.Journal), DatabaseState.Read(folder)).Do();

    /// <summary>Decides what mending would do, from all that the folder has; nothing is changed.</summary>
    /// <exception cref="StoreException">It can't be decided.</exception>
    public static IMending Decide(StoreFolder folder, JournalScan journal, DatabaseState database) => database switch
    {
        DatabaseState.Sound { Version: < Schema.FirstWithJournal } old => Migration.Of(folder, journal, old),
        DatabaseState.Sound sound => new JournalMending(folder, journal, sound),
        DatabaseState.Damaged damaged when journal.Length == 0 && BackupFiles.List(folder.Backups).IsEmpty =>
            throw new StoreException(damaged.Fault),
        DatabaseState.Damaged damaged => new Rebuilding(folder, journal, damaged.Fault, damaged.Last),
        _ => journal.Length > 0 || BackupFiles.List(folder.Backups).Length > 0
            ? new Rebuilding(folder, journal, new DatabaseFault.Missing(folder.Database))
            : new Beginning(folder),
    };

    /// <summary>Makes the database anew, where it fails although it could be read; the journal is whole then.</summary>
    public static ImmutableArray<StoreFault> Rebuild(StoreFolder folder) =>
        new Rebuilding(folder, JournalScan.Read(folder.Journal), new DatabaseFault.Damaged(folder.Database)).Do();

    /// <summary>That a person has to choose.</summary>
    /// <param name="reason">What is wrong.</param>
    /// <param name="journal">The journal, which can't settle it.</param>
    /// <param name="against">What speaks against it.</param>
    public static StoreException Undecided(StoreFault reason, JournalScan journal, Contradiction? against = null) =>
        new(new MendingFault.Undecided(reason, journal.Last?.Mark, journal.IsWhole ? null : journal.Length - journal.SoundLength, against));

    // A folder in which nothing was ever stored.
    private sealed class Beginning(StoreFolder folder) : IMending
    {
        public ImmutableArray<StoreFault> Do()
        {
            BookDatabase.Create(folder, new BookContent(), null);
            return [];
        }
    }
}
