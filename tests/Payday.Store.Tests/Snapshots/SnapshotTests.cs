using LiteDB;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Store.Backups;
using Payday.Store.Changes;
using Payday.Store.Checks;
using Payday.Store.Contents;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Restores;
using Payday.Store.Snapshots;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Snapshots;

public sealed class SnapshotTests : IDisposable
{
    private readonly ScratchFolder scratch = new();

    public SnapshotTests()
    {
        using (BookStore store = Samples.Begun(Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(SnapshotWish.Usual.FewestRecords), Draft = new RoutineDraft(Samples.Payday) });
        }

        // The first to read it whole leaves the snapshot.
        Load();
    }

    private StoreFolder Folder => scratch.Data;

    [Fact]
    public void Dispose_AfterReadingManyRecords_LeavesASnapshotOfWhatWasRead()
    {
        Assert.True(File.Exists(Folder.Snapshot));
        Assert.False(File.Exists(Folder.UnfinishedSnapshot));
        Assert.Equal(WithoutSnapshot(), Load());
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Folder.Snapshot));
        }
    }

    [Fact]
    public void Dispose_AfterReadingFew_LeavesNone()
    {
        using var other = new ScratchFolder();
        using (BookStore store = Samples.Begun(other.Data))
        {
            store.Load();
        }

        Assert.False(File.Exists(other.Data.Snapshot));
    }

    [Fact]
    public void Dispose_AfterReadingFewWhereFewAreEnough_LeavesOneAndRenewsItAsSoon()
    {
        using var other = new ScratchFolder();
        StoreFolder folder = other.Data with { Snapshots = new SnapshotWish(FewestRecords: 1, FurthestBehind: 1) };
        using (BookStore store = Samples.Begun(folder))
        {
            store.Load();
        }

        byte[] first = File.ReadAllBytes(folder.Snapshot);
        using (BookStore store = BookStore.Open(folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
            store.Load();
        }

        Assert.NotEqual(first, File.ReadAllBytes(folder.Snapshot));
    }

    [Fact]
    public void Load_ChangesAfterTheSnapshot_HasThem()
    {
        byte[] first = File.ReadAllBytes(Folder.Snapshot);
        using (BookStore store = BookStore.Open(Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(3), DropsDraft = true });
            store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 2)] });
            store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday.PlusDays(14), 3, 4)] });
            store.Save(new BookChange { Reopened = [Samples.Payday.PlusDays(14)], Draft = new RoutineDraft(Samples.Payday.PlusDays(14)) });
        }

        string carriedOn = Load();

        Assert.Equal(first, File.ReadAllBytes(Folder.Snapshot));
        Assert.Equal(WithoutSnapshot(), carriedOn);
    }

    [Fact]
    public void Look_WhileAnotherHasChangedIt_HasTheChanges()
    {
        using BookStore store = BookStore.Open(Folder);
        store.Save(new BookChange { Movements = Samples.Incomes(3), DropsDraft = true });
        Assert.NotNull(SnapshotFile.TryLook(Folder));

        Assert.Equal(Samples.Text(store.Load()), Samples.Text(BookStore.Peek(Folder).Book));
    }

    [Fact]
    public void Load_JournalFarBeyondTheSnapshot_LeavesANewOne()
    {
        byte[] first = File.ReadAllBytes(Folder.Snapshot);
        using (BookStore store = BookStore.Open(Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(4_000) });
        }

        string carriedOn = Load();

        Assert.NotEqual(first, File.ReadAllBytes(Folder.Snapshot));
        Assert.Equal(carriedOn, Load());
        Assert.Equal(WithoutSnapshot(), carriedOn);
    }

    [Fact]
    public void Load_HouseholdChangedSince_HasTheNewOne()
    {
        using (BookStore store = BookStore.Open(Folder))
        {
            Household household = Samples.Household;
            store.Save(new BookChange { Household = household with { Pots = household.Pots.SetItem(0, household.Pots[0] with { Name = "Renamed" }) } });
        }

        string carriedOn = Load();

        Assert.Contains("Renamed", carriedOn, StringComparison.Ordinal);
        Assert.Equal(WithoutSnapshot(), carriedOn);
    }

    [Fact]
    public void Load_AnyByteOfItWrong_PassesItOver()
    {
        byte[] sound = File.ReadAllBytes(Folder.Snapshot);
        for (int at = 0; at < sound.Length; at += 997)
        {
            byte[] damaged = [.. sound];
            damaged[at] ^= 1;
            File.WriteAllBytes(Folder.Snapshot, damaged);

            Assert.Null(SnapshotFile.TryRead(Folder));
        }

        File.WriteAllBytes(Folder.Snapshot, sound[..(sound.Length / 2)]);
        Assert.Null(SnapshotFile.TryRead(Folder));
        Assert.Equal(WithoutSnapshot(), Load());
    }

    [Fact]
    public void Load_SnapshotOfAJournalThatWasPutBackAndWentOnOtherwise_PassesItOver()
    {
        BackupFile early;
        using (BookStore store = BookStore.Open(Folder))
        {
            early = StoreBackups.Make(store, null);
            store.Save(new BookChange { Movements = Samples.Incomes(4_000) });
        }

        Load();
        byte[] late = File.ReadAllBytes(Folder.Snapshot);
        using (Restoring restoring = Restoring.Begin(Folder))
        {
            restoring.Put(restoring.Find(early.Path)!);
        }

        Assert.False(File.Exists(Folder.Snapshot));
        File.WriteAllBytes(Folder.Snapshot, late);
        Assert.Equal(WithoutSnapshot(keep: true), Load());
        using (BookStore store = BookStore.Open(Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
        }

        Assert.Equal(WithoutSnapshot(keep: true), Load());
    }

    /// <summary>What the snapshot vouches for is not read from the database: a document damaged there must not get into the journal's digest.</summary>
    [Fact]
    public void Save_OverADocumentDamagedInTheDatabase_KeepsTheJournalTrue()
    {
        RawDatabase.Edit(Folder, database =>
        {
            BsonDocument draft = database.GetCollection("drafts").FindAll().Single();
            draft["step"] = "Slip";
            database.GetCollection("drafts").Update(draft);
        });
        using (BookStore store = BookStore.Open(Folder))
        {
            store.Load();
            store.Save(new BookChange { DropsDraft = true });
        }

        Assert.Empty(StoreCheck.Run(Folder).Findings);
    }

    [Fact]
    public void Check_SnapshotOfSomethingElse_FindsItAndMendMakesItAnew()
    {
        Assert.Empty(StoreCheck.Run(Folder).Findings);
        Snapshot told = SnapshotFile.TryRead(Folder)!;
        StoredRecords older = StoredRecords.Of(JournalScan.ContentOf(JournalScan.Read(Folder.Journal).Lines.Take((int)told.Place.Number - 1)))!;
        SnapshotFile.TryWrite(Folder, told with { Records = older });

        Assert.Equal(CheckPart.Snapshot, Assert.Single(StoreCheck.Run(Folder).Findings).Part);
        StoreCheck.Mend(Folder);
        Load();
        Assert.True(File.Exists(Folder.Snapshot));
        Assert.Empty(StoreCheck.Run(Folder).Findings);
    }

    public void Dispose() => scratch.Dispose();

    private string Load()
    {
        using BookStore store = BookStore.Open(Folder);
        return Samples.Text(store.Load());
    }

    private string WithoutSnapshot(bool keep = false)
    {
        byte[] kept = File.ReadAllBytes(Folder.Snapshot);
        File.Delete(Folder.Snapshot);
        string whole = Load();
        if (keep)
        {
            File.WriteAllBytes(Folder.Snapshot, kept);
        }

        return whole;
    }
}
