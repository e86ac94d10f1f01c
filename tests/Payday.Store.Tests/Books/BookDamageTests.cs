using CsCheck;

namespace Payday.Store.Tests.Books;

/// <summary>A damaged store must never pass for an empty one, and stays as it is.</summary>
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
    public void Open_DatabaseCutShort_IsRefusedAndLeftAlone(int length)
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        byte[] cut = File.ReadAllBytes(scratch.Data.Database)[..length];

        AssertLeftAlone(scratch.Data, cut, $"{scratch.Data.Database} is damaged: its end is missing. Nothing was changed; keep a copy of the folder, then put back a copy from before.");
    }

    [Fact]
    public void Open_DatabaseWithoutItsLastPage_IsRefusedAndLeftAlone()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        byte[] cut = File.ReadAllBytes(scratch.Data.Database)[..^PageSize];

        AssertLeftAlone(scratch.Data, cut, $"{scratch.Data.Database} is damaged: its end is missing. Nothing was changed; keep a copy of the folder, then put back a copy from before.");
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

        Assert.Equal($"{scratch.Data.Database} is missing, but other files of its store are there. Put it back from a copy, or choose another folder with --data.", fault.Message);
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
    public void Load_HouseholdGoneButMovementsThere_IsDamaged()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        RawDatabase.Edit(scratch.Data, database => database.DropCollection("household"));

        using BookStore store = BookStore.Open(scratch.Data);
        Assert.Equal(
            $"{scratch.Data.Database} is damaged. Nothing was changed; keep a copy of the folder, then put back a copy from before.",
            Assert.Throws<StoreException>(store.Load).Message);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(9)]
    public void Load_MovementGone_SaysWhich(int number)
    {
        using var scratch = new ScratchFolder();
        using (BookStore begun = Samples.Begun(scratch.Data))
        {
            int more = 9 - Samples.Beginning.Movements.Length;
            begun.Save(new BookChange { Movements = Samples.Incomes(more), Closed = Samples.Closed(Samples.Payday, 1, 9) });
        }

        RawDatabase.Edit(scratch.Data, database => database.GetCollection("movements").Delete((long)number));

        using BookStore store = BookStore.Open(scratch.Data);
        Assert.Equal(
            $"Movement {number} is missing from the ledger in {scratch.Data.Path}. Nothing was changed; keep a copy of the folder, then put back a copy from before.",
            Assert.Throws<StoreException>(store.Load).Message);
    }

    [Fact]
    public void Load_CashBelowZero_SaysSo()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Movements = [Samples.Income(5_00) with
        {
            From = Core.Ledgers.LedgerEnd.InCash(Core.Ledgers.Job.Pot("food")),
            To = Core.Ledgers.LedgerEnd.InAccount(Core.Ledgers.Job.Buffer),
        }] });

        string message = Assert.Throws<StoreException>(store.Load).Message;
        Assert.StartsWith($"The ledger in {scratch.Data.Path} doesn't add up: cash/pot:food is ", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_BytesOverwrittenAnywhere_LoadsOrSaysThatItIsDamaged()
    {
        using var scratch = new ScratchFolder();
        using (BookStore begun = Samples.Begun(scratch.Data))
        {
            begun.Save(new BookChange { Movements = Samples.Incomes(40), Closed = Samples.Closed(Samples.Payday, 1, 3) });
        }

        byte[] whole = File.ReadAllBytes(scratch.Data.Database);
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte.Array[1, 64]).Sample(
            (at, bytes) =>
            {
                byte[] damaged = [.. whole];
                bytes.AsSpan(0, Math.Min(bytes.Length, damaged.Length - at)).CopyTo(damaged.AsSpan(at));
                File.WriteAllBytes(scratch.Data.Database, damaged);
                try
                {
                    using BookStore store = BookStore.Open(scratch.Data);
                    Assert.NotNull(store.Load());
                }
                catch (StoreException fault)
                {
                    Assert.Contains(scratch.Data.Path, fault.Message, StringComparison.Ordinal);
                }
            },
            iter: 60,
            threads: 1);
    }

    private static void AssertLeftAlone(StoreFolder folder, byte[] content, string message)
    {
        File.WriteAllBytes(folder.Database, content);

        Assert.Equal(message, Assert.Throws<StoreException>(() => BookStore.Open(folder)).Message);
        Assert.Equal(content, File.ReadAllBytes(folder.Database));
        Assert.True(folder.HasBook);
    }
}
