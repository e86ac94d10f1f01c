using Payday.Core.Ledgers;
using Payday.Store.Changes;
using Payday.Store.Checks;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Journals;

namespace Payday.Store.Tests.Books;

/// <summary>A change is one line of the journal, and the database holds the last line in one document, which has a limit.</summary>
public sealed class LargeChangeTests
{
    [Fact]
    public void Save_ChangeLargerThanALineMayBe_IsRefusedAndStoresNothing()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        string before = Samples.Text(store.Load());
        long length = new FileInfo(scratch.Data.Journal).Length;
        Movement wordy = Samples.Income(1) with { Reason = new string('x', JournalLine.Longest / 4) };

        var fault = Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = [wordy, wordy, wordy, wordy] }));

        Assert.Equal("This change takes 12 MB, and no more than 12 MB can be stored at once. Nothing was changed; shorten its texts, or enter it in parts.", fault.Said());
        Assert.Equal((before, 1, length), (Samples.Text(store.Load()), store.LastChange, new FileInfo(scratch.Data.Journal).Length));
        store.Save(new BookChange { Movements = Samples.Incomes(1) });
        store.Dispose();
        Assert.Empty(StoreCheck.Run(scratch.Data).Findings);
    }

    [Fact]
    public void Save_ChangesAlmostAsLargeAsALineMayBe_AreStoredAndRebuilt()
    {
        using var scratch = new ScratchFolder();
        string before;
        using (BookStore store = Samples.Begun(scratch.Data))
        {
            Movement wordy = Samples.Income(1) with { Reason = new string('x', JournalLine.Longest - 10_000) };
            store.Save(new BookChange { Movements = [wordy] });
            store.Save(new BookChange { Movements = [wordy] });
            before = Samples.Text(store.Load());
        }

        // The journal begins anew with all that the database holds: more than one line may have.
        File.Delete(scratch.Data.Journal);
        using (BookStore store = BookStore.Open(scratch.Data))
        {
            Assert.Equal(before, Samples.Text(store.Load()));
        }

        File.Delete(scratch.Data.Database);
        using BookStore rebuilt = BookStore.Open(scratch.Data);
        Assert.Equal(before, Samples.Text(rebuilt.Load()));
    }
}
