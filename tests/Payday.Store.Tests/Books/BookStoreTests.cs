using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Store.Changes;
using Payday.Store.Fields;
using Payday.Store.HouseholdFiles;
using Payday.Store.Tests.HouseholdFiles;

namespace Payday.Store.Tests.Books;

public sealed class BookStoreTests
{
    [Fact]
    public void Load_NothingSaved_IsNull()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = BookStore.Open(scratch.Data);

        Assert.Null(store.Load());
    }

    [Fact]
    public void Open_NewFolder_IsForItsOwnerAlone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);

        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal("-rwx------", Mode(scratch.Data.Path));
            Assert.Equal(
                ["payday-log.db -rw-------", "payday.db -rw-------", "payday.holder -rw-------", "payday.journal -rw-------", "payday.lock -rw-------"],
                Directory.GetFiles(scratch.Data.Path).Order(StringComparer.Ordinal).Select(file => $"{Path.GetFileName(file)} {Mode(file)}"));
        }
    }

    [Fact]
    public void Open_FolderThatOthersMayRead_KeepsItAndMakesPrivateFilesInIt()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");
        using var scratch = new ScratchFolder();
        if (!OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(scratch.Data.Path);
            File.SetUnixFileMode(scratch.Data.Path, (UnixFileMode)0b111_101_101);
            using BookStore store = Samples.Begun(scratch.Data);

            Assert.Equal("-rwxr-xr-x", Mode(scratch.Data.Path));
            Assert.All(Directory.GetFiles(scratch.Data.Path), file => Assert.Equal("-rw-------", Mode(file)));
        }
    }

    [Fact]
    public void Dispose_AfterSaving_LeavesTheDatabaseAndAnEmptyLock()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();

        Assert.Equal(
            ["payday.db", "payday.journal", "payday.lock"],
            Directory.GetFileSystemEntries(scratch.Data.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(0, new FileInfo(scratch.Data.Lock).Length);
    }

    [Fact]
    public void Save_DemoHouseholdAndItsFirstPayday_ReadsBackTheSame()
    {
        using var scratch = new ScratchFolder();
        Household household = HouseholdFile.Read(DemoFile.Text).Value!;
        Book begun = Book.Begin(household);
        RoutinePlan plan = Routine.Plan(begun, new RoutineDraft(Routine.Next(begun).Value)).Value!;
        Book closed = Closing.Of(plan).Value!;
        using (BookStore store = BookStore.Open(scratch.Data))
        {
            store.Save(new BookChange { Household = household, Movements = [.. begun.Ledger.Movements] });
            store.Save(new BookChange { Movements = [.. closed.Ledger.Since(begun.Ledger)], Closed = closed.Closed });
        }

        using BookStore again = BookStore.Open(scratch.Data);
        Assert.Equal(Samples.Text(closed), Samples.Text(again.Load()));
    }

    [Fact]
    public void Save_Movements_NumbersThemOnWhateverTheyCarry()
    {
        using var scratch = new ScratchFolder();
        using (BookStore store = Samples.Begun(scratch.Data))
        {
            store.Save(new BookChange { Movements = [Samples.Income(1) with { Number = 77 }] });
        }

        using BookStore again = BookStore.Open(scratch.Data);
        again.Save(new BookChange { Movements = Samples.Incomes(2) });
        int opening = Samples.Beginning.Movements.Length;

        Assert.Equal(
            Enumerable.Range(1, opening + 3).Select(number => (long)number),
            again.Load()!.Ledger.Movements.Select(movement => movement.Number));
    }

    [Fact]
    public void Save_AnotherHousehold_TakesThePlaceOfTheFirst()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Household = Samples.Household with { Name = "Mill lane" } });

        Assert.Equal("Mill lane", store.Load()!.Household.Name);
    }

    [Fact]
    public void Save_Drafts_KeepsTheLastUntilItIsDropped()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Draft = new RoutineDraft(Samples.Payday) });
        store.Save(new BookChange { Draft = new RoutineDraft(Samples.Payday.PlusDays(14)) });
        Assert.Equal(Samples.Payday.PlusDays(14), store.Load()!.Draft!.Payday);

        store.Save(new BookChange { Movements = Samples.Incomes(1) });
        Assert.NotNull(store.Load()!.Draft);

        store.Save(new BookChange { DropsDraft = true });
        Assert.Null(store.Load()!.Draft);
    }

    [Fact]
    public void Save_ClosedPaydays_ComeBackOldestFirst()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday.PlusDays(14), 1, 1)] });
        store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 1)] });

        Assert.Equal([Samples.Payday, Samples.Payday.PlusDays(14)], store.Load()!.Closed.Select(closed => closed.Payday));
    }

    [Fact]
    public void LoadAndSave_AfterDispose_AreRefusedAsTheLockIsGone()
    {
        using var scratch = new ScratchFolder();
        BookStore store = Samples.Begun(scratch.Data);
        store.Dispose();

        Assert.Throws<ObjectDisposedException>(store.Load);
        Assert.Throws<ObjectDisposedException>(() => store.Save(new BookChange { DropsDraft = true }));
    }

    [Fact]
    public void HasBook_FollowsTheStore()
    {
        using var scratch = new ScratchFolder();
        Assert.False(scratch.Data.HasBook);
        Samples.Begun(scratch.Data).Dispose();
        Assert.True(scratch.Data.HasBook);
    }

    private static string Mode(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return "";
        }

        UnixFileMode mode = File.GetUnixFileMode(path);
        return "-" + string.Concat("rwxrwxrwx".Select((letter, i) => ((int)mode & (0b100_000_000 >> i)) != 0 ? letter : '-'));
    }
}
