using CsCheck;
using Payday.Core.Ids;
using Payday.Store.Changes;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

/// <summary>A damaged database comes back from the journal; where it can't, it is refused and stays as it is.</summary>
public sealed class BookDamageTests
{
    private const int PageSize = 8192;

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    [InlineData(PageSize - 1)]
    [InlineData(PageSize)]
    [InlineData(PageSize * 2)]
    [InlineData((PageSize * 4) + 17)]
    [InlineData(-PageSize)]
    public void Open_DatabaseCutShort_IsRebuiltAndKeptAside(int length)
    {
        using var scratch = new ScratchFolder();
        string before = Lived(scratch.Data);
        byte[] cut = File.ReadAllBytes(scratch.Data.Database);
        cut = cut[..(length < 0 ? cut.Length + length : length)];
        File.WriteAllBytes(scratch.Data.Database, cut);

        using BookStore store = BookStore.Open(scratch.Data);

        Assert.Equal(before, Samples.Text(store.Load()));
        Assert.StartsWith($"{scratch.Data.Database} is damaged: its end is missing. It was rebuilt from the journal, up to change 2 of ", Assert.Single(store.Told()), StringComparison.Ordinal);
        Assert.Equal(cut, File.ReadAllBytes(Assert.Single(Directory.GetFiles(scratch.Data.Aside))));
    }

    [Fact]
    public void Open_DatabaseCutShortWithoutAJournal_IsRefusedAndLeftAlone()
    {
        using var scratch = new ScratchFolder();
        Lived(scratch.Data);
        File.Delete(scratch.Data.Journal);

        AssertLeftAlone(scratch.Data, new byte[100], $"{scratch.Data.Database} is damaged: its end is missing. Nothing was changed; keep a copy of the folder, then put back a copy from before.");
    }

    [Fact]
    public void Open_FileThatIsNoDatabase_IsRefusedAndLeftAlone()
    {
        using var scratch = new ScratchFolder();
        Directory.CreateDirectory(scratch.Data.Path);
        byte[] letter = [.. Enumerable.Repeat((byte)'x', (PageSize * 3) + 5)];

        AssertLeftAlone(scratch.Data, letter, $"{scratch.Data.Database} was not written by Payday. Nothing was changed; move it elsewhere, or choose another folder with --data.");
    }

    [Fact]
    public void Open_DatabaseGoneButItsLogThere_IsRefused()
    {
        using var scratch = new ScratchFolder();
        Directory.CreateDirectory(scratch.Data.Path);
        string log = Path.Combine(scratch.Data.Path, "payday-log.db");
        File.WriteAllBytes(log, new byte[PageSize]);

        var fault = Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data));

        Assert.Equal($"{scratch.Data.Database} is missing, but other files of its store are there. Put it back from a copy, or choose another folder with --data.", fault.Said());
        Assert.True(scratch.Data.HasBook);
        Assert.False(File.Exists(scratch.Data.Database));
        Assert.Equal(PageSize, new FileInfo(log).Length);
    }

    [Fact]
    public void Open_LeftoversOfAStoreNeverFinished_AreReplaced()
    {
        using var scratch = new ScratchFolder();
        Directory.CreateDirectory(scratch.Data.Path);
        File.WriteAllBytes(scratch.Data.Unfinished, new byte[100]);
        File.WriteAllBytes(Path.Combine(scratch.Data.Path, "payday-log.db"), []);

        Samples.Begun(scratch.Data).Dispose();

        Assert.False(File.Exists(scratch.Data.Unfinished));
        using BookStore store = BookStore.Open(scratch.Data);
        Assert.NotNull(store.Load());
    }

    [Fact]
    public void Load_HouseholdGoneButMovementsThere_IsRebuilt() =>
        AssertRebuilt(database => database.DropCollection("household"));

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(9)]
    public void Load_MovementGone_IsRebuilt(int number) =>
        AssertRebuilt(database => database.GetCollection("movements").Delete((long)number));

    [Fact]
    public void Load_AmountChanged_IsRebuilt() => AssertRebuilt(database =>
    {
        LiteDB.BsonDocument movement = database.GetCollection("movements").FindById(3L);
        movement["amount"] = movement["amount"].AsInt64 + 1;
        database.GetCollection("movements").Update(movement);
    });

    [Fact]
    public void Load_CashBelowZero_SaysSo()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Movements = [Samples.Income(5_00) with
        {
            From = Core.Ledgers.LedgerEnd.InCash(Core.Ledgers.Purpose.Pot(new PotId("food"))),
            To = Core.Ledgers.LedgerEnd.InAccount(Core.Ledgers.Purpose.Buffer),
        }] });

        string message = Assert.Throws<StoreException>(store.Load).Said();
        Assert.StartsWith($"The ledger in {scratch.Data.Path} doesn't add up: cash/pot:food is ", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_BytesOfTheDatabaseOverwrittenAnywhere_GivesTheSameBook()
    {
        using var scratch = new ScratchFolder();
        using (BookStore begun = Samples.Begun(scratch.Data))
        {
            begun.Save(new BookChange { Movements = Samples.Incomes(40), Closed = [Samples.Closed(Samples.Payday, 1, 3)] });
        }

        string before;
        using (BookStore store = BookStore.Open(scratch.Data))
        {
            before = Samples.Text(store.Load());
        }

        byte[] whole = File.ReadAllBytes(scratch.Data.Database);
        byte[] journal = File.ReadAllBytes(scratch.Data.Journal);
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte.Array[1, 64]).Sample(
            (at, bytes) =>
            {
                byte[] damaged = [.. whole];
                bytes.AsSpan(0, Math.Min(bytes.Length, damaged.Length - at)).CopyTo(damaged.AsSpan(at));
                File.WriteAllBytes(scratch.Data.Database, damaged);
                File.Delete(Path.Combine(scratch.Data.Path, "payday-log.db"));
                File.WriteAllBytes(scratch.Data.Journal, journal);
                using BookStore store = BookStore.Open(scratch.Data);
                Assert.Equal(before, Samples.Text(store.Load()));
                store.Save(new BookChange { Movements = Samples.Incomes(1) });
            },
            iter: 100,
            threads: 1);
    }

    [Fact]
    public void Save_DatabaseAndJournalFailingWhileOpen_SaysSoEachTimeAndGoesOnOnceTheyAreBack()
    {
        using var scratch = new ScratchFolder();
        string before = Lived(scratch.Data);
        byte[] database = File.ReadAllBytes(scratch.Data.Database);
        byte[] journal = File.ReadAllBytes(scratch.Data.Journal);
        using BookStore store = BookStore.Open(scratch.Data);
        Overwrite(scratch.Data.Database, new byte[database.Length]);
        Overwrite(scratch.Data.Journal, journal[..^10]);

        // Once it is seen that the journal is another one, nothing is written; once both have been looked at, nothing can be told.
        Assert.StartsWith($"{scratch.Data.Journal} is not the file any more", Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1) })).Said(), StringComparison.Ordinal);
        Assert.Contains("The journal can't settle it", Assert.Throws<StoreException>(store.Load).Said(), StringComparison.Ordinal);
        for (int i = 0; i < 3; i++)
        {
            Assert.Contains("The journal can't settle it", Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1) })).Said(), StringComparison.Ordinal);
            Assert.Contains("The journal can't settle it", Assert.Throws<StoreException>(store.Load).Said(), StringComparison.Ordinal);
        }

        Overwrite(scratch.Data.Database, database);
        Overwrite(scratch.Data.Journal, journal);
        Assert.Equal(before, Samples.Text(store.Load()));
        store.Save(new BookChange { Movements = Samples.Incomes(1) });
        Assert.Equal(10, store.Load()!.Ledger.Movements.Count);
    }

    [Fact]
    public void Save_AfterARebuildThatFailed_OpensTheFilesAnew()
    {
        using var scratch = new ScratchFolder();
        Lived(scratch.Data);
        byte[] journal = File.ReadAllBytes(scratch.Data.Journal);
        using BookStore store = BookStore.Open(scratch.Data);
        store.Load();
        Databases.LogFile.Synced = path =>
        {
            if (path.StartsWith(scratch.Data.Path, StringComparison.Ordinal))
            {
                Overwrite(scratch.Data.Journal, journal[..^10]);
                throw new InvalidOperationException("A page of the database can't be written to.");
            }
        };
        try
        {
            Assert.Contains("The journal can't settle it", Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1) })).Said(), StringComparison.Ordinal);
        }
        finally
        {
            Databases.LogFile.Synced = null;
        }

        store.Save(new BookChange { Movements = Samples.Incomes(1) });
        Assert.Equal(10, store.Load()!.Ledger.Movements.Count);
        Assert.StartsWith("The journal lacked change 2 ", Assert.Single(store.Told()), StringComparison.Ordinal);
    }

    // Two changes and nine movements.
    private static string Lived(StoreFolder folder)
    {
        using BookStore begun = Samples.Begun(folder);
        begun.Save(new BookChange { Movements = Samples.Incomes(9 - Samples.Beginning.Movements.Length), Draft = new Core.Books.RoutineDraft(Samples.Payday) });
        return Samples.Text(begun.Load());
    }

    // As a failing disk does it: under the program that has the file open.
    private static void Overwrite(string path, byte[] bytes)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);
        file.SetLength(0);
        file.Write(bytes);
    }

    private static void AssertRebuilt(Action<LiteDB.LiteDatabase> damage)
    {
        using var scratch = new ScratchFolder();
        string before = Lived(scratch.Data);
        RawDatabase.Edit(scratch.Data, damage);

        using BookStore store = BookStore.Open(scratch.Data);

        Assert.Equal(before, Samples.Text(store.Load()));
        Assert.StartsWith(
            $"{scratch.Data.Database} holds something else than was written to it. It was rebuilt from the journal, up to change 2 of ", Assert.Single(store.Told()), StringComparison.Ordinal);
    }

    private static void AssertLeftAlone(StoreFolder folder, byte[] content, string message)
    {
        File.WriteAllBytes(folder.Database, content);

        Assert.Equal(message, Assert.Throws<StoreException>(() => BookStore.Open(folder)).Said());
        Assert.Equal(content, File.ReadAllBytes(folder.Database));
        Assert.True(folder.HasBook);
    }
}
