using Payday.Store.Changes;
using Payday.Store.Files;

namespace Payday.Store.Tests.Books;

/// <summary>Files that are put in the place of those that a session has open, as a program does it that syncs the folder.</summary>
public sealed class ReplacedFilesTests : IDisposable
{
    private readonly ScratchFolder scratch = new();

    public static TheoryData<string, string> FilesAndWays
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (string name in new[] { "payday.db", "payday-log.db", "payday.journal", "payday.lock" })
            {
                foreach (string way in new[] { "replaced", "deleted", "renamed", "swapped for a link" })
                {
                    all.Add(name, way);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(FilesAndWays))]
    public void Save_FileIsAnotherOne_IsRefusedAndTouchesNothingThere(string name, string way)
    {
        string path = Path.Combine(scratch.Data.Path, name);
        using BookStore store = Samples.Begun(scratch.Data);
        Do(way, path);
        Dictionary<string, byte[]> before = Files();

        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(
                $"{path} is not the file any more that Payday has open: another program, such as one that syncs the folder, has replaced, changed or deleted it. What you entered is not stored; close Payday, open it again, and look at what is there.",
                Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1), Closed = [Samples.Closed(Samples.Payday, 1, 1)] })).Said());
        }

        store.Dispose();
        before.Remove(scratch.Data.Holder);
        Dictionary<string, byte[]> after = Files();
        after.Remove(scratch.Data.Holder);
        Assert.Equal(before.Keys.Order(), after.Keys.Order());
        Assert.All(before, file => Assert.Equal(file.Value, after[file.Key]));
    }

    [Fact]
    public void Save_JournalGrewUnderIt_IsRefused()
    {
        using BookStore store = Samples.Begun(scratch.Data);
        using (var other = new FileStream(scratch.Data.Journal, FileMode.Append, FileAccess.Write, FileShare.ReadWrite))
        {
            other.WriteByte((byte)'x');
        }

        Assert.StartsWith($"{scratch.Data.Journal} is not the file any more", Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1) })).Said(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("payday.db")]
    [InlineData("payday.journal")]
    [InlineData("payday.lock")]
    public void Save_FileIsReplacedInTheMiddleOfIt_IsNotToldAsStored(string name)
    {
        string path = Path.Combine(scratch.Data.Path, name);
        using BookStore store = Samples.Begun(scratch.Data);
        Databases.LogFile.Synced = log => _ = log.StartsWith(scratch.Data.Path, StringComparison.Ordinal) && Do("replaced", path);
        try
        {
            Assert.EndsWith(
                "Close Payday, open it again, and look whether what you entered is there.",
                Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1) })).Said(),
                StringComparison.Ordinal);
        }
        finally
        {
            Databases.LogFile.Synced = null;
        }
    }

    [Fact]
    public void Dispose_AnotherHasTakenANewLock_LeavesItsHolderThere()
    {
        using BookStore store = Samples.Begun(scratch.Data);
        File.Delete(scratch.Data.Lock);
        using BookStore other = BookStore.Open(scratch.Data);
        other.Save(new BookChange { Movements = Samples.Incomes(3) });

        Assert.Throws<StoreException>(() => store.Save(new BookChange { Movements = Samples.Incomes(1) }));
        store.Dispose();

        Assert.True(File.Exists(scratch.Data.Holder));
        other.Save(new BookChange { Movements = Samples.Incomes(1) });
        Assert.Equal(Samples.Beginning.Movements.Length + 4, other.Load()!.Ledger.Movements.Count);
    }

    public void Dispose() => scratch.Dispose();

    private static bool Do(string way, string path)
    {
        switch (way)
        {
            case "replaced":
                byte[] bytes = path.EndsWith(".lock", StringComparison.Ordinal) ? [] : Bytes(path);
                File.WriteAllBytes(path + ".tmp", bytes);
                File.Move(path + ".tmp", path, overwrite: true);
                break;
            case "deleted":
                File.Delete(path);
                break;
            case "renamed":
                File.Move(path, path + ".away");
                break;
            default:
                File.Move(path, path + ".away");
                File.CreateSymbolicLink(path, path + ".away");
                break;
        }

        return true;
    }

    private static byte[] Bytes(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        byte[] bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    private Dictionary<string, byte[]> Files() => Directory.GetFiles(scratch.Data.Path)
        .Where(path => FileFacts.Of(path).Kind == FileKind.File && !path.Contains("payday.lock", StringComparison.Ordinal))
        .ToDictionary(path => path, Bytes, StringComparer.Ordinal);
}
