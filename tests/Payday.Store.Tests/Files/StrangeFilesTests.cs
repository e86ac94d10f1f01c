using Payday.Store.Changes;
using Payday.Store.Checks;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Restores;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Files;

/// <summary>What stands in the place of a file and is none: named at once, never opened, waited on or followed.</summary>
public sealed class StrangeFilesTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);
    private readonly ScratchFolder scratch = new();

    public static TheoryData<string, string> KindsAndFiles
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (string kind in SpecialFile.Kinds)
            {
                foreach (string path in new StoreFolder("").Files)
                {
                    all.Add(kind, path);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(KindsAndFiles))]
    public void AnyWork_WithSomethingElseInPlaceOfAFile_NamesItAndChangesNothing(string kind, string name)
    {
        Samples.Begun(scratch.Data).Dispose();
        string path = Path.Combine(scratch.Data.Path, name);
        SpecialFile.Put(kind, path);
        string begins = $"{path} is {kind}{(kind == "a link" ? ", and Payday keeps its files in the folder itself" : ", not a file of Payday's")}.";

        Action[] works = [() => BookStore.Open(scratch.Data).Dispose(), () => BookStore.Peek(scratch.Data), () => StoreCheck.Run(scratch.Data), () => StoreCheck.Mend(scratch.Data), () => Restoring.Begin(scratch.Data).Dispose()];
        foreach (Action work in works)
        {
            Assert.StartsWith(begins, InTime(() => Assert.Throws<StoreException>(work).Said()), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("a named pipe")]
    [InlineData("a folder")]
    [InlineData("a device")]
    [InlineData("a socket")]
    [InlineData("a link")]
    public void AnyWork_WithSomethingElseAmongTheBackups_GoesOnAndTheCheckNamesIt(string kind)
    {
        using (BookStore begun = Samples.Begun(scratch.Data))
        {
            StoreBackups.Make(begun, null);
        }

        // Newer and further than the others, so that each reader of backups comes to it first.
        string path = Path.Combine(scratch.Data.Backups, "payday-20990101T000000Z-99.journal.gz");
        SpecialFile.Put(kind, path);

        InTime(() =>
        {
            using BookStore store = BookStore.Open(scratch.Data);
            store.Load();
            store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 1)] });
            store.FinishBackups();
            return Assert.Single(store.Load()!.Closed);
        });

        Finding finding = Assert.Single(InTime(() => StoreCheck.Run(scratch.Data)).Findings, one => one.Part != CheckPart.Files);
        Assert.Equal((CheckPart.Backups, kind == "a link" ? $"{path} is not there." : $"{path} is {kind}, not a backup."), (finding.Part, finding.Said()));
        using Restoring restoring = Restoring.Begin(scratch.Data);
        Assert.Null(InTime(() => restoring.Find(path)));
        Assert.DoesNotContain(path, InTime(restoring.List).Select(one => one.Choice));
    }

    [Theory]
    [InlineData("a named pipe")]
    [InlineData("a folder")]
    [InlineData("a device")]
    [InlineData("a socket")]
    [InlineData("a link")]
    public void Restore_WithSomethingElseAmongTheJournalsKeptAside_ListsTheOthers(string kind)
    {
        Samples.Begun(scratch.Data).Dispose();
        Directory.CreateDirectory(scratch.Data.Aside);
        SpecialFile.Put(kind, Path.Combine(scratch.Data.Aside, "20990101T000000-payday.journal"));

        using Restoring restoring = Restoring.Begin(scratch.Data);
        Assert.Equal([Candidate.Journal, Candidate.Database], InTime(restoring.List).Select(one => one.Choice));
    }

    [Theory]
    [InlineData("a named pipe")]
    [InlineData("a device")]
    [InlineData("a socket")]
    [InlineData("a link")]
    public void Save_SomethingElseInPlaceOfTheFolderOfBackups_StoresAndNamesIt(string kind)
    {
        using BookStore store = Samples.Begun(scratch.Data);
        SpecialFile.Put(kind, scratch.Data.Backups);

        store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 1)] });
        store.FinishBackups();

        Assert.Single(store.Load()!.Closed);
        Assert.StartsWith(
            $"{scratch.Data.Backups} is {(kind == "a link" ? "a link to something that is not there" : $"{kind}, not a folder")}, so there is no backup in it.",
            Assert.Single(store.Told()),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a named pipe")]
    [InlineData("a device")]
    [InlineData("a socket")]
    public void Open_SomethingElseInPlaceOfTheFolder_SaysSo(string kind)
    {
        SpecialFile.Put(kind, scratch.Data.Path);

        Assert.Equal($"{scratch.Data.Path} is {kind}, not a folder. Choose another with --data.", InTime(() => Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data)).Said()));
    }

    [Fact]
    public void Open_LinkToNowhereInPlaceOfTheFolder_SaysSo()
    {
        SpecialFile.Put("a link", scratch.Data.Path);

        Assert.Equal($"{scratch.Data.Path} is a link to something that is not there. Choose another folder with --data.", Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data)).Said());
    }

    [Fact]
    public void Open_FolderNamedThroughALink_IsThatFolder()
    {
        Samples.Begun(scratch.Data).Dispose();
        File.CreateSymbolicLink(scratch.Path("link"), scratch.Data.Path);

        using BookStore store = BookStore.Open(new StoreFolder(scratch.Path("link")));

        Assert.NotNull(store.Load());
        Assert.Empty(store.Told());
    }

    public void Dispose() => scratch.Dispose();

    private static T InTime<T>(Func<T> work)
    {
        Task<T> task = Task.Run(work);
        Assert.True(task.Wait(Patience), "It waits for something.");
        return task.Result;
    }
}
