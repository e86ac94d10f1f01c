using System.Collections.Immutable;
using Payday.Store.Backups;
using Payday.Store.Databases;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Store.Restores;

/// <summary>Putting a store back: what there is is read, and put in its place, under one lock, so that nothing can be stored between the two.</summary>
public sealed class Restoring : IDisposable
{
    private readonly StoreFolder folder;
    private readonly FolderLock taken;

    private Restoring(StoreFolder folder, FolderLock taken) => (this.folder, this.taken) = (folder, taken);

    /// <summary>Takes the folder, making it where it is missing.</summary>
    /// <exception cref="StoreException">Another process has it open, or it can't be used.</exception>
    public static Restoring Begin(StoreFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return StoreFaults.Explained(folder, StoreAction.Open, () =>
        {
            folder.Make();
            return new Restoring(folder, FolderLock.Take(folder));
        });
    }

    /// <summary>What the store can be put back to: what is there now, then the backups, then journals kept aside, newest first. What is damaged is left out.</summary>
    /// <exception cref="StoreException">The folder can't be read.</exception>
    public ImmutableArray<Candidate> List() => StoreFaults.Explained(folder, StoreAction.Read, () => Candidate.All(folder));

    /// <summary>One of them.</summary>
    /// <param name="choice">See <see cref="Candidate.Choice"/>.</param>
    /// <returns>It; null where it is not there or not sound.</returns>
    /// <exception cref="StoreException">The folder can't be read.</exception>
    public Candidate? Find(string choice) => StoreFaults.Explained(folder, StoreAction.Read, () => Candidate.TryRead(folder, choice));

    /// <summary>Why a file is none that <see cref="Find"/> takes.</summary>
    public static BackupUnfit Unfit(string choice) => (BackupFiles.Read(choice) as BackupReading.Unfit)?.Why ?? new BackupUnfit.Damaged();

    /// <summary>Puts the store back. What was there is kept in <see cref="StoreFolder.Aside"/>.</summary>
    /// <exception cref="StoreException">It could not be done; then the store is as before, or says what it lacks when it is opened.</exception>
    public void Put(Candidate candidate)
    {
        ArgumentNullException.ThrowIfNull(candidate);
        if (!taken.IsThere)
        {
            throw FolderChanged.Fault(folder.Lock, isWritten: false);
        }

        StoreFaults.Explained(folder, StoreAction.Write, () =>
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

    /// <inheritdoc/>
    public void Dispose() => taken.Dispose();
}
