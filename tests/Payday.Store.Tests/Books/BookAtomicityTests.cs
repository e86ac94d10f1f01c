using NodaTime;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Store.Changes;
using Payday.Store.Fields;
using Payday.Store.Files;

namespace Payday.Store.Tests.Books;

public sealed class BookAtomicityTests
{
    [Fact]
    public void Save_PaydayClosedTwice_StoresNothingOfTheChange()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Movements = Samples.Incomes(3), Closed = [Samples.Closed(Samples.Payday, 1, 3)], Draft = new RoutineDraft(Samples.Payday) });
        string before = Samples.Text(store.Load());

        var fault = Assert.Throws<StoreException>(() => store.Save(new BookChange
        {
            Household = Samples.Household with { Name = "Mill lane" },
            Movements = Samples.Incomes(500),
            Closed = [Samples.Closed(Samples.Payday, 1, 3)],
            DropsDraft = true,
        }));

        Assert.StartsWith("What you entered could not be stored", fault.Said(), StringComparison.Ordinal);
        AssertUnchangedAndUsable(scratch, store, before);
    }

    [Fact]
    public void Save_MovementThatCannotBeWritten_StoresNothingOfTheChange()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        string before = Samples.Text(store.Load());

        // A movement that no caller may make: its fault is the program's, and comes through as it is.
        Assert.Throws<NullReferenceException>(() => store.Save(new BookChange
        {
            Household = Samples.Household with { Name = "Mill lane" },
            Movements = [.. Samples.Incomes(500), Samples.Income(1) with { To = null! }, Samples.Income(2)],
            Draft = new RoutineDraft(Samples.Payday),
        }));

        AssertUnchangedAndUsable(scratch, store, before);
    }

    [Fact]
    public void Save_HouseholdThatCouldNotBeReadAgain_IsRefused()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        string before = Samples.Text(store.Load());

        Assert.Throws<ArgumentException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1), Household = Samples.Household with { Sources = [] } }));

        AssertUnchangedAndUsable(scratch, store, before);
    }

    [Fact]
    public void Save_FirstChangeFails_LeavesAStoreWithoutAHousehold()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = BookStore.Open(scratch.Data);

        Assert.Throws<NullReferenceException>(() => store.Save(Samples.Beginning with { Movements = [Samples.Income(1) with { From = null! }] }));
        Assert.Null(store.Load());

        store.Save(Samples.Beginning);
        Assert.NotNull(store.Load());
    }

    [Fact]
    public void Save_ManyFailures_LeaveTheFileAsLarge()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        long before = new FileInfo(scratch.Data.Database).Length;
        for (int i = 0; i < 5; i++)
        {
            Assert.Throws<NullReferenceException>(() => store.Save(new BookChange { Movements = [.. Samples.Incomes(100), Samples.Income(1) with { To = null! }] }));
        }

        Assert.Equal(before, new FileInfo(scratch.Data.Database).Length);
    }

    private static void AssertUnchangedAndUsable(ScratchFolder scratch, BookStore store, string before)
    {
        Assert.Equal(before, Samples.Text(store.Load()));
        int count = store.Load()!.Ledger.Movements.Count;
        store.Save(new BookChange { Movements = Samples.Incomes(1) });
        Assert.Equal(count + 1, store.Load()!.Ledger.Movements[^1].Number);

        store.Dispose();
        using BookStore again = BookStore.Open(scratch.Data);
        Assert.Equal(count + 1, again.Load()!.Ledger.Movements.Count);
    }
}
