using Payday.Store.Backups;
using Payday.Store.Checks;
using Payday.Store.Folders;
using Payday.Store.Restores;
using Payday.Store.Tests.Books;
using Payday.Texts;

namespace Payday.Store.Tests.Checks;

/// <summary>A data folder that people of one group share: setgid and the group's, as inode(7) has it.</summary>
public sealed class SharedFolderTests : IDisposable
{
    private const UnixFileMode ForOwner = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode ForGroup = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute;
    private const UnixFileMode Shared = ForOwner | ForGroup | UnixFileMode.SetGroup;
    private const UnixFileMode SharedFile = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite;
    private readonly ScratchFolder scratch = new();

    public SharedFolderTests() => Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");

    // Whatever the umask: 022, with which tests usually run, would leave the group's write bit out.
    [Fact]
    public void Files_MadeInAFolderOfAGroup_AreTheGroupsToo()
    {
        Make(Shared);

        LiveAWhile();

        AssertShared();
        Assert.True(Directory.Exists(scratch.Data.Backups));
        Assert.Empty(StoreCheck.Run(scratch.Data).Findings);
    }

    [Theory]
    [InlineData(ForOwner)]
    [InlineData(ForOwner | UnixFileMode.SetGroup)]
    [InlineData(ForOwner | ForGroup)]
    public void Files_MadeInAnyOtherFolder_AreTheirOwnersAlone(UnixFileMode mode)
    {
        Make(mode);

        LiveAWhile();

        Assert.All(Directory.EnumerateFiles(scratch.Data.Path, "*", SearchOption.AllDirectories), file => Assert.Equal((file, (UnixFileMode)0), (file, Mode(file) & ForGroup)));
    }

    // A book that was one person's: its files become the group's as their owner opens them.
    [Fact]
    public void Open_AfterAFolderBecameAGroups_LetsTheGroupIn()
    {
        Make(ForOwner);
        LiveAWhile();
        Permit(scratch.Data.Path, Shared);

        BookStore.Open(scratch.Data).Dispose();

        AssertShared();
    }

    [Fact]
    public void Mend_FolderOfAGroupThatStrangersSee_ClosesItToThemAlone()
    {
        Make(Shared);
        LiveAWhile();
        Permit(scratch.Data.Path, Shared | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);

        using (BookStore store = BookStore.Open(scratch.Data))
        {
            Assert.Contains(store.Notices, notice => notice is FolderDoubt.OpenToOthers);
        }

        Assert.Equal([$"{scratch.Data.Path} is now readable by you and its group alone."], StoreCheck.Mend(scratch.Data).Select(StoreTexts.Of));
        Assert.Equal(Shared, Mode(scratch.Data.Path));
        using BookStore closed = BookStore.Open(scratch.Data);
        Assert.Empty(closed.Notices);
    }

    public void Dispose() => scratch.Dispose();

    private void AssertShared()
    {
        Assert.All(Directory.EnumerateFiles(scratch.Data.Path, "*", SearchOption.AllDirectories), file => Assert.Equal((file, SharedFile), (file, Mode(file))));
        Assert.All(Directory.EnumerateDirectories(scratch.Data.Path), folder => Assert.Equal((folder, Shared), (folder, Mode(folder))));
    }

    private void LiveAWhile()
    {
        using (BookStore store = Samples.Begun(scratch.Data))
        {
            StoreBackups.Make(store, null);
        }

        using BookStore again = BookStore.Open(scratch.Data);
        Assert.NotNull(again.Load());
    }

    private void Make(UnixFileMode mode)
    {
        Directory.CreateDirectory(scratch.Data.Path);
        Permit(scratch.Data.Path, mode);
    }

    private static void Permit(string path, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, mode);
        }
    }

    private static UnixFileMode Mode(string path) => OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(path);
}
