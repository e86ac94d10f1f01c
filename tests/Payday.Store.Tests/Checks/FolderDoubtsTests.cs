using Payday.Store.Checks;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Checks;

public sealed class FolderDoubtsTests
{
    [Fact]
    public void Open_FolderThatPaydayMade_SaysNothing()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();

        using BookStore store = BookStore.Open(scratch.Data);

        Assert.Empty(store.Told());
    }

    [Fact]
    public void Open_FolderOthersCanEnter_SaysSoUntilItIsMended()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        Permit(scratch.Data.Path, UnixFileMode.GroupRead | UnixFileMode.GroupExecute);

        using (BookStore store = BookStore.Open(scratch.Data))
        {
            Assert.Equal([$"Other users of this machine can look into {scratch.Data.Path}. Close it to them with payday check --mend."], store.Told());
        }

        StoreCheck.Mend(scratch.Data);
        using BookStore again = BookStore.Open(scratch.Data);
        Assert.Empty(again.Told());
    }

    [Fact]
    public void Open_FilesOthersCouldReadInAFolderTheyCannotEnter_SaysNothing()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        Permit(scratch.Data.Database, UnixFileMode.OtherRead);

        using BookStore store = BookStore.Open(scratch.Data);

        Assert.Empty(store.Told());
    }

    [Fact]
    public void Open_CopiesThatPaydayDidNotMake_NamesThem()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        File.Copy(scratch.Data.Journal, Path.Combine(scratch.Data.Path, "payday (kitchen laptop).journal"));
        File.Copy(scratch.Data.Database, Path.Combine(scratch.Data.Path, "payday (kitchen laptop).db"));

        using BookStore store = BookStore.Open(scratch.Data);

        Assert.StartsWith(
            $"{scratch.Data.Path} has copies of its files that Payday did not make: payday (kitchen laptop).db, payday (kitchen laptop).journal. ",
            Assert.Single(store.Told()),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("payday.journal")]
    [InlineData("payday.db")]
    public void Open_SuchACopyInAnEmptyFolder_IsThatBook(string name)
    {
        // What the notice says to do.
        using var scratch = new ScratchFolder();
        string before;
        using (BookStore begun = Samples.Begun(scratch.Data))
        {
            before = Samples.Text(begun.Load());
        }

        var other = new StoreFolder(scratch.Path("empty"));
        Directory.CreateDirectory(other.Path);
        File.Copy(Path.Combine(scratch.Data.Path, name), Path.Combine(other.Path, name));

        using BookStore store = BookStore.Open(other);
        Assert.Equal(before, Samples.Text(store.Load()));
    }

    private static void Permit(string path, UnixFileMode more)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, File.GetUnixFileMode(path) | more);
        }
    }
}
