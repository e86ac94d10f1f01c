using Payday.Store.Backups;
using Payday.Store.Changes;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Restores;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Backups;

/// <summary>Several books, and a person's own backups, in one folder.</summary>
public sealed class SharedPlaceTests : IDisposable
{
    private readonly ScratchFolder scratch = new();
    private readonly MovingClock clock = new();

    public SharedPlaceTests() => Directory.CreateDirectory(Place);

    private string Place => scratch.Path("stick");

    [Fact]
    public void Save_TwoHouseholdsToOneFolder_EachThinsOutItsOwnAlone()
    {
        StoreFolder one = Begun("one");
        StoreFolder other = Begun("other");
        Close(one, 3);
        string[] others = Names();
        Close(other, 3);
        string[] both = Names();
        Assert.Equal(6, both.Length);

        Close(one, 12);

        Assert.Empty(both.Except(others).Except(Names()));
        Assert.Equal(8 + 3, Names().Length);
        Assert.Equal(8, Names().Count(name => BackupFile.Of(name)!.Book == BookName.Short(Book(one))));
    }

    [Fact]
    public void Save_BackupsThatAPersonMade_Stay()
    {
        StoreFolder folder = Begun("one");
        using (BookStore store = BookStore.Open(folder))
        {
            StoreBackups.Make(store, Place);
            StoreBackups.Make(store, null);
        }

        string made = Assert.Single(Names());
        Assert.EndsWith("-kept.journal.gz", made, StringComparison.Ordinal);
        string copy = Path.Combine(Place, "payday-20200101T000000Z-1.journal.gz");
        File.Copy(Path.Combine(Place, made), copy);
        Close(folder, 20);

        Assert.Contains(made, Names());
        Assert.True(File.Exists(copy));
        Assert.Equal(8 + 2, Names().Length);
        Assert.Equal(8 + 1, Directory.GetFiles(folder.Backups).Length);
    }

    [Fact]
    public void Make_WhereTheLadderMadeOneOfTheSame_MakesOneThatStays()
    {
        StoreFolder folder = Begun("one");
        using BookStore store = BookStore.Open(folder);
        store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 1)] });
        store.FinishBackups();
        BackupFile first = StoreBackups.Make(store, Place);
        Assert.True(first.IsHandMade);
        Assert.Equal(first, StoreBackups.Make(store, Place));
    }

    [Fact]
    public void Save_TwoCopiesOfOneFolderThatWentOnApart_KeepEachOthers()
    {
        StoreFolder one = Begun("one");
        var other = new StoreFolder(scratch.Path("copy")) { Clock = clock };
        Copy(one.Path, other.Path);
        Assert.Equal(Book(one), Book(other));
        Close(one, 4);
        string[] theirs = [.. Names().Where(name => BackupFile.Of(name)!.Number > 1)];
        Assert.Equal(3, theirs.Length);

        Close(other, 20);

        Assert.Empty(theirs.Except(Names()));
    }

    [Fact]
    public void Save_WhatOnlyHasTheNameOfItsBackup_Stays()
    {
        StoreFolder folder = Begun("one");
        string[] fakes = [.. Enumerable.Range(1, 3).Select(day => BackupFile.In(Place, new DateTime(2020, 1, day, 0, 0, 0, DateTimeKind.Utc), 1, BookName.Short(Book(folder)), isHandMade: false).Path)];
        foreach (string fake in fakes)
        {
            File.WriteAllText(fake, "a letter");
        }

        Close(folder, 15);

        Assert.All(fakes, fake => Assert.True(File.Exists(fake)));
    }

    [Fact]
    public void Book_RebuiltRestoredAndBegunAnew_StaysTheSame()
    {
        StoreFolder folder = Begun("one");
        string book = Book(folder);
        Assert.Matches("^[0-9a-f]{32}$", book);
        using (BookStore store = BookStore.Open(folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(2) });
            StoreBackups.Make(store, null);
        }

        File.Delete(folder.Database);
        BookStore.Open(folder).Dispose();
        Assert.Equal(book, Book(folder));

        Directory.Delete(folder.Backups, recursive: true);
        File.Delete(folder.Journal);
        BookStore.Open(folder).Dispose();
        Assert.Equal((1, book), (JournalScan.Read(folder.Journal).Lines.Length, Book(folder)));

        foreach (string choice in new[] { Candidate.Database, Candidate.Journal })
        {
            using (Restoring restoring = Restoring.Begin(folder))
            {
                restoring.Put(restoring.Find(choice)!);
            }

            Assert.Equal(book, Book(folder));
        }

        Assert.NotEqual(book, Book(Begun("other")));
    }

    [Fact]
    public void Save_BookOfBeforeThereWereNames_GetsOneAndItsChainGoesOn()
    {
        StoreFolder folder = Begun("one");
        JournalScan named = JournalScan.Read(folder.Journal);
        JournalLine old = JournalLine.Make(null, named.Lines[0].Edits(), named.Lines[0].Digest, clock.GetUtcNow(), BookName.None);
        Assert.DoesNotContain("book", System.Text.Encoding.UTF8.GetString(old.Text.Span[^200..]), StringComparison.Ordinal);
        File.Delete(folder.Database);
        File.WriteAllBytes(folder.Journal, [.. old.Text.Span, (byte)'\n']);

        using (BookStore store = BookStore.Open(folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
        }

        JournalScan scan = JournalScan.Read(folder.Journal);
        Assert.True(scan.IsWhole);
        Assert.Equal([BookName.None, scan.Last!.Book, scan.Last.Book], scan.Lines.Select(line => line.Book));
        Assert.Equal(old.Sha, scan.Lines[0].Sha);
        Assert.NotEqual(BookName.None, scan.Last.Book);
    }

    [Fact]
    public void List_BackupOfAnotherHousehold_IsSaidToBe()
    {
        StoreFolder one = Begun("one");
        StoreFolder other = Begun("other");
        using (BookStore store = BookStore.Open(other))
        {
            StoreBackups.Make(store, Place);
        }

        using Restoring restoring = Restoring.Begin(one);
        Candidate theirs = restoring.Find(Directory.GetFiles(Place).Single())!;
        Candidate mine = restoring.Find(Candidate.Journal)!;
        Assert.True(theirs.IsOfAnotherBook(mine));
        Assert.False(mine.IsOfAnotherBook(restoring.Find(Candidate.Database)!));
    }

    public void Dispose() => scratch.Dispose();

    private static string Book(StoreFolder folder) => JournalScan.Read(folder.Journal).Last!.Book;

    private static void Copy(string from, string to)
    {
        PrivateFolder.Make(to);
        foreach (string path in Directory.GetFiles(from))
        {
            File.Copy(path, Path.Combine(to, Path.GetFileName(path)));
        }
    }

    private StoreFolder Begun(string name)
    {
        var folder = new StoreFolder(scratch.Path(name)) { Clock = clock };
        using BookStore store = Samples.Begun(folder);
        StoreBackups.Always(store, Place);
        return folder;
    }

    private void Close(StoreFolder folder, int times)
    {
        using BookStore store = BookStore.Open(folder);
        for (int i = 0; i < times; i++)
        {
            clock.Now += TimeSpan.FromMinutes(1);
            store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday.PlusDays((int)(clock.Now - MovingClock.Begins).TotalMinutes), 1, 1)] });
            store.FinishBackups();
        }

        Assert.Empty(store.Told());
    }

    private string[] Names() => [.. Directory.GetFiles(Place).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    private sealed class MovingClock : TimeProvider
    {
        public static readonly DateTimeOffset Begins = new(2026, 3, 6, 10, 0, 0, TimeSpan.Zero);

        public DateTimeOffset Now { get; set; } = Begins;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
