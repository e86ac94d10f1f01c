using Payday.Store.Changes;
using Payday.Store.Files;
using Payday.Store.Journals;
using Payday.Store.Recovery;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Recovery;

public sealed class MendingTests : IDisposable
{
    private const int Last = LivedStore.Changes - 1;
    private readonly LivedStore lived = new();

    [Fact]
    public void Open_DatabaseGone_IsTheSameFromTheJournal()
    {
        lived.Put(null, lived.Journals[Last]);

        (string book, string notice) = lived.Open();

        Assert.Equal(lived.Books[Last], book);
        Assert.StartsWith($"{lived.Folder.Database} is missing. It was rebuilt from the journal, up to change 6 of ", notice, StringComparison.Ordinal);
        Assert.Equal(lived.Journals[Last], File.ReadAllBytes(lived.Folder.Journal));
    }

    [Fact]
    public void Rebuild_FromTheJournalAlone_GivesTheSameBytesOfContent()
    {
        var before = Assert.IsType<DatabaseState.Sound>(DatabaseState.Read(lived.Folder));
        lived.Put(null, lived.Journals[Last]);
        lived.Open();
        var after = Assert.IsType<DatabaseState.Sound>(DatabaseState.Read(lived.Folder));

        Assert.Equal(before.Content.Digest, after.Content.Digest);
        Assert.Equal(before.Last!.Text.ToArray(), after.Last!.Text.ToArray());
    }

    [Fact]
    public void Open_JournalGone_BeginsOneWithAllThatTheDatabaseHolds()
    {
        lived.Put(lived.Databases[Last], null);

        (string book, string notice) = lived.Open();

        Assert.Equal(lived.Books[Last], book);
        Assert.Contains("begins anew with all that the database holds", notice, StringComparison.Ordinal);
        lived.Put(null, File.ReadAllBytes(lived.Folder.Journal));
        Assert.Equal(lived.Books[Last], lived.Open().Book);
    }

    [Fact]
    public void Open_LastLineTornAnywhereButInTheDatabase_IsCompletedExactly()
    {
        int start = lived.Journals[Last - 1].Length;
        for (int length = start; length < lived.Journals[Last].Length; length += 37)
        {
            lived.Put(lived.Databases[Last], lived.Journals[Last][..length]);

            (string book, string notice) = lived.Open();

            Assert.Equal(lived.Books[Last], book);
            Assert.StartsWith("The journal lacked change 6 ", notice, StringComparison.Ordinal);
            Assert.Equal(lived.Journals[Last], File.ReadAllBytes(lived.Folder.Journal));
        }
    }

    [Fact]
    public void Open_LastLineTornAnywhereAndNotInTheDatabase_IsTakenOff()
    {
        int start = lived.Journals[Last - 1].Length;
        for (int length = start + 1; length < lived.Journals[Last].Length; length += 37)
        {
            lived.Put(lived.Databases[Last - 1], lived.Journals[Last][..length]);

            (string book, string notice) = lived.Open();

            // All but the line break is a whole line: it is as good as written.
            Assert.Equal(lived.Books[length == lived.Journals[Last].Length - 1 ? Last : Last - 1], book);
            Assert.Contains("no confirmed change", notice, StringComparison.Ordinal);
            Assert.Equal(lived.Journals[Last - 1], File.ReadAllBytes(lived.Folder.Journal));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(Last - 1)]
    public void Open_DatabaseOfBefore_TakesWhatItLacksFromTheJournal(int change)
    {
        lived.Put(lived.Databases[change], lived.Journals[Last]);

        (string book, string notice) = lived.Open();

        Assert.Equal(lived.Books[Last], book);
        Assert.Equal(change == Last - 1 ? "" : $"{lived.Folder.Database} was {Last - change} changes behind the journal and has taken them from there; nothing is lost.", notice);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(Last - 1)]
    public void Open_JournalOfBefore_LosesNothing(int change)
    {
        lived.Put(lived.Databases[Last], lived.Journals[change]);

        Assert.Equal(lived.Books[Last], lived.Open().Book);
        Assert.True(JournalScan.Read(lived.Folder.Journal).IsWhole);
        Assert.Equal(("", lived.Books[Last]), (lived.Open().Notice, lived.Open().Book));
    }

    [Fact]
    public void Open_AnyByteOfTheJournalChanged_LosesNothingAndMendsIt()
    {
        for (int at = 0; at < lived.Journals[Last].Length; at += 101)
        {
            byte[] damaged = [.. lived.Journals[Last]];
            damaged[at] ^= 4;
            lived.Put(lived.Databases[Last], damaged);
            Mending.Mend(lived.Folder);

            Assert.Equal((lived.Books[Last], ""), lived.Open());
            Assert.True(JournalScan.Read(lived.Folder.Journal).IsWhole);
        }
    }

    [Fact]
    public void Open_JournalTwiceInItsFile_IsTakenOnce()
    {
        lived.Put(lived.Databases[Last], [.. lived.Journals[Last], .. lived.Journals[Last][..^20]]);

        Assert.Equal(lived.Books[Last], lived.Open().Book);
        Assert.Equal(lived.Journals[Last], File.ReadAllBytes(lived.Folder.Journal));
    }

    [Fact]
    public void Open_BothDamaged_IsLeftToThePerson()
    {
        byte[] database = lived.Databases[Last][..100];
        byte[] journal = lived.Journals[Last][..^30];
        lived.Put(database, journal);

        var fault = Assert.Throws<StoreException>(() => BookStore.Open(lived.Folder));

        Assert.Contains("The journal can't settle it: it is sound up to change 5 of ", fault.Said(), StringComparison.Ordinal);
        Assert.EndsWith("Nothing was changed; look at what there is with payday restore, and choose.", fault.Said(), StringComparison.Ordinal);
        Assert.Equal(database, File.ReadAllBytes(lived.Folder.Database));
        Assert.Equal(journal, File.ReadAllBytes(lived.Folder.Journal));
    }

    [Fact]
    public void Open_DatabaseAndJournalOfDifferentPasts_IsLeftToThePerson()
    {
        lived.Put(lived.Databases[2], lived.Journals[2]);
        using (BookStore store = BookStore.Open(lived.Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(7) });
        }

        lived.Put(File.ReadAllBytes(lived.Folder.Database), lived.Journals[Last]);
        byte[] database = File.ReadAllBytes(lived.Folder.Database);

        var fault = Assert.Throws<StoreException>(() => BookStore.Open(lived.Folder));

        Assert.Contains("tell different things", fault.Said(), StringComparison.Ordinal);
        Assert.Equal(database, File.ReadAllBytes(lived.Folder.Database));
        Assert.Equal(lived.Journals[Last], File.ReadAllBytes(lived.Folder.Journal));
    }

    public void Dispose() => lived.Dispose();
}
