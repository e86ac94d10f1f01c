using System.Collections.Immutable;
using Payday.Store.Databases;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Store.Backups;

/// <summary>Backups made and put back by the person.</summary>
public static class StoreBackups
{
    /// <summary>Makes a backup now and reads it again.</summary>
    /// <param name="store">The store, open.</param>
    /// <param name="into">The folder to copy to, which must be there; null for the one in the data folder.</param>
    /// <exception cref="StoreException">It could not be made.</exception>
    public static BackupFile Make(BookStore store, string? into)
    {
        ArgumentNullException.ThrowIfNull(store);
        try
        {
            if (into is null)
            {
                PrivateFolder.Make(store.Folder.Backups);
            }

            return BackupFiles.Make(store.Folder, into ?? store.Folder.Backups);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(BackupFaults.Sentence(into ?? store.Folder.Backups, fault), fault);
        }
    }

    /// <summary>Names the folder to which every backup goes too; null for none.</summary>
    public static void Always(BookStore store, string? into)
    {
        ArgumentNullException.ThrowIfNull(store);
        StoreFaults.Explained(store.Folder, StoreAction.Write, () =>
        {
            SecondPlace.Set(store.Folder, into);
            return true;
        });
    }

    /// <summary>What a store can be put back to.</summary>
    /// <exception cref="StoreException">Another process has it open.</exception>
    public static ImmutableArray<Candidate> List(StoreFolder folder) => Locked(folder, StoreAction.Read, () => Candidate.All(folder));

    /// <summary>One of them.</summary>
    /// <returns>It; null where it is not there or not sound.</returns>
    /// <exception cref="StoreException">Another process has it open.</exception>
    public static Candidate? Find(StoreFolder folder, string choice) => Locked(folder, StoreAction.Read, () => Candidate.TryRead(folder, choice));

    /// <summary>Puts a store back. What was there is kept in <see cref="StoreFolder.Aside"/>.</summary>
    /// <exception cref="StoreException">It could not be done; then the store is as before, or says what it lacks when it is opened.</exception>
    public static void Restore(StoreFolder folder, Candidate candidate)
    {
        ArgumentNullException.ThrowIfNull(candidate);
        Locked(folder, StoreAction.Write, () =>
        {
            AsideFiles.CopyJournal(folder);
            if (candidate.Choice == Candidate.Database)
            {
                // The other way round, so that the database is never away from its place.
                JournalStart.Write(folder, candidate.Lines);
                using BookDatabase database = BookDatabase.Open(folder);
                database.Mark(candidate.Lines.LastOrDefault());
                return true;
            }

            AsideFiles.MoveDatabase(folder);
            JournalStart.Write(folder, candidate.Lines);
            BookDatabase.Create(folder, candidate.Content, candidate.Lines.LastOrDefault());
            return true;
        });
    }

    private static T Locked<T>(StoreFolder folder, StoreAction action, Func<T> work)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, action, () =>
        {
            folder.Make();
            using FolderLock taken = FolderLock.Take(folder);
            return work();
        });
    }
}
