using Payday.Store.Changes;
using Payday.Store.Files;
using Payday.Store.Restores;
using Payday.Store.Tests.Books;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Backups;

public sealed class RestoringTests
{
    [Fact]
    public void Begin_UntilItEnds_KeepsOthersOut()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        using (Restoring restoring = Restoring.Begin(scratch.Data))
        {
            Candidate database = restoring.Find(Candidate.Database)!;

            // What is stored between reading and writing would be gone.
            Assert.True(Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data)).Fault is FolderFault.Taken);
            restoring.Put(database);
            Assert.True(Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data)).Fault is FolderFault.Taken);
        }

        BookStore.Open(scratch.Data).Dispose();
    }

    [Fact]
    public void Put_LockWasDeletedMeanwhile_PutsNothing()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        using Restoring restoring = Restoring.Begin(scratch.Data);
        Candidate journal = restoring.Find(Candidate.Journal)!;
        File.Delete(scratch.Data.Lock);
        using BookStore other = BookStore.Open(scratch.Data);
        other.Save(new BookChange { Movements = Samples.Incomes(1) });

        Assert.StartsWith($"{scratch.Data.Lock} is not the file any more", Assert.Throws<StoreException>(() => restoring.Put(journal)).Said(), StringComparison.Ordinal);
        other.Save(new BookChange { Movements = Samples.Incomes(1) });
    }
}
