using Payday.Store.Changes;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Restores;
using Payday.Store.Tests.Recovery;

namespace Payday.Store.Tests.Books;

/// <summary>Which folders are synced. That each is enough is tried by the simulated power cuts.</summary>
public sealed class FolderSyncTests
{
    [Fact]
    public void Of_FolderThatIsThere_ReturnsAndOfOneThatIsNot_IsAFaultOfTheDisk()
    {
        using var scratch = new ScratchFolder();

        FolderSync.Of(scratch.Path("."));

        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows syncs no folders.");
        Assert.Equal(2, Assert.Throws<IOException>(() => FolderSync.Of(scratch.Path("none"))).HResult);
    }

    [Fact]
    public void Of_FolderThatMayNotBeRead_IsRefused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");
        Assert.SkipWhen(Environment.IsPrivilegedProcess, "Permissions don't bind root.");
        using var scratch = new ScratchFolder();
        if (!OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(scratch.Path("closed"), UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        Assert.Throws<UnauthorizedAccessException>(() => FolderSync.Of(scratch.Path("closed")));
    }

    [Fact]
    public void Open_FolderDeepDown_SyncsEachThatWasMadeAndTheFirstFiles()
    {
        using var scratch = new ScratchFolder();
        var folder = new StoreFolder(scratch.Path("a/b/data"));

        string[] synced = Synced(scratch, () => BookStore.Open(folder).Dispose());

        Assert.Equal(["", "a", "a/b", "a/b/data"], synced.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Save_SecondOfASession_SyncsNoFolder()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        using BookStore store = BookStore.Open(scratch.Data);

        Assert.Equal(["data"], Synced(scratch, () => store.Save(new BookChange { Movements = Samples.Incomes(1) })));
        Assert.Empty(Synced(scratch, () => store.Save(new BookChange { Movements = Samples.Incomes(1) })));
    }

    [Fact]
    public void Make_Backup_SyncsItsFolder()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);

        Assert.Equal(["data", "data/backups"], Synced(scratch, () => StoreBackups.Make(store, null)));
    }

    // One test at a time is in here: what others sync meanwhile is not below its folder.
    private static string[] Synced(ScratchFolder scratch, Action work)
    {
        List<string> synced = [];
        string root = Path.GetFullPath(scratch.Path("."));
        FolderSync.Syncing += Note;
        try
        {
            work();
            return [.. synced];
        }
        finally
        {
            FolderSync.Syncing -= Note;
        }

        void Note(string folder)
        {
            if ((folder + "/").StartsWith(root, StringComparison.Ordinal))
            {
                lock (synced)
                {
                    synced.Add(Path.GetRelativePath(root, folder) is var name and not "." ? name : "");
                }
            }
        }
    }
}
