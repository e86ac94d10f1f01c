using System.Collections.Immutable;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Backups;

/// <summary>Makes the backups before each closing beside the work, so that nobody waits for a disk.</summary>
/// <remarks>
/// What is copied is the journal as far as it went when that was asked for. It only ever grows while a store is open,
/// so the copy is the same however much later it is made.
/// </remarks>
/// <param name="folder">The store.</param>
internal sealed class BackupWork(StoreFolder folder)
{
    private readonly Lock gate = new();
    private readonly List<StoreFault> warnings = [];
    private JournalPlace? wanted;
    private Task? running;

    /// <summary>Takes what could not be done and was not told yet.</summary>
    public ImmutableArray<StoreFault> TakeWarnings()
    {
        lock (gate)
        {
            ImmutableArray<StoreFault> taken = [.. warnings];
            warnings.Clear();
            return taken;
        }
    }

    /// <summary>Begins a backup up to a place; where one is being made, once that is done.</summary>
    public void Begin(JournalPlace upTo)
    {
        lock (gate)
        {
            wanted = upTo;
            running ??= Task.Run(Work);
        }
    }

    /// <summary>Waits until all that was begun is done.</summary>
    /// <param name="most">How long at most.</param>
    /// <returns>Whether it is.</returns>
    public bool Finish(TimeSpan most)
    {
        Task? task;
        lock (gate)
        {
            task = running;
        }

        return task is null || task.Wait(most);
    }

    private void Work()
    {
        while (Next() is { } place)
        {
            ImmutableArray<StoreFault> told = AutomaticBackup.Make(folder, place);
            lock (gate)
            {
                warnings.AddRange(told);
            }
        }
    }

    private JournalPlace? Next()
    {
        lock (gate)
        {
            JournalPlace? next = wanted;
            wanted = null;
            running = next is null ? null : running;
            return next;
        }
    }
}
