using Payday.Core.Books;
using Payday.Store.Changes;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Restores;
using Payday.Store.Snapshots;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Recovery;

/// <summary>The database is gone, and the journal is sound in itself but not what it was: what else is there says so.</summary>
public sealed class WitnessTests : IDisposable
{
    private const int Changes = 6;
    private readonly ScratchFolder scratch = new();
    private readonly List<byte[]> journals = [];
    private readonly List<string> books = [];

    public WitnessTests()
    {
        for (int i = 0; i < Changes; i++)
        {
            using BookStore store = BookStore.Open(Folder);
            store.Save(i == 0 ? Samples.Beginning : new BookChange { Movements = Samples.Incomes(i), Draft = new RoutineDraft(Samples.Payday.PlusDays(i)) });
            journals.Add(File.ReadAllBytes(Folder.Journal));
            books.Add(Samples.Text(store.Load()));
        }

        Assert.False(File.Exists(Folder.Snapshot));
        Assert.False(Directory.Exists(Folder.Backups));
    }

    private StoreFolder Folder => scratch.Data;

    [Fact]
    public void Open_LastLineCutAndABackupHasIt_IsRefused()
    {
        Backup();
        Cut();

        AssertRefused("The backup payday-", $" goes on to change {Changes}.");
    }

    [Fact]
    public void Open_LastLineCutAndTheSnapshotHasIt_IsRefusedAndTheSnapshotCanBePutBack()
    {
        KeepSnapshot();
        Cut();

        AssertRefused($"The snapshot goes on to change {Changes}.");
        using (Restoring restoring = Restoring.Begin(Folder))
        {
            Candidate snapshot = restoring.Find(Candidate.Snapshot)!;
            Assert.Contains(Candidate.Snapshot, restoring.List().Select(one => one.Choice));
            Assert.Equal(Changes, snapshot.Changes);
            restoring.Put(snapshot);
        }

        AssertIs(books[^1]);
    }

    [Fact]
    public void Open_JournalGoneToo_IsRefusedWhereADatabaseOfBeforeIsBehindTheSnapshot()
    {
        byte[] database = File.ReadAllBytes(Folder.Database);
        using (BookStore store = BookStore.Open(Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(9) });
        }

        KeepSnapshot();
        File.WriteAllBytes(Folder.Database, database);
        File.Delete(Folder.Journal);

        AssertRefused($"The snapshot goes on to change {Changes + 1}.");
    }

    [Fact]
    public void Open_LastLineCutAndTheDamagedDatabaseHasIt_HasItBack()
    {
        RawDatabase.Edit(Folder, raw => raw.GetCollection("movements").Delete(2));
        File.WriteAllBytes(Folder.Journal, journals[^2]);

        using (BookStore store = BookStore.Open(Folder))
        {
            Assert.Contains($"was rebuilt from the journal, which lacked change {Changes} of ", Assert.Single(store.Told()), StringComparison.Ordinal);
        }

        AssertIs(books[^1]);
        Assert.Equal(journals[^1], File.ReadAllBytes(Folder.Journal));
    }

    [Fact]
    public void Open_TwoLinesCutAndTheDamagedDatabaseHasTheLast_IsRefused()
    {
        RawDatabase.Edit(Folder, raw => raw.GetCollection("movements").Delete(2));
        File.WriteAllBytes(Folder.Journal, journals[^3]);

        AssertRefused($"The database goes on to change {Changes}.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(Changes - 1)]
    public void Open_JournalRehashedFromALineOn_IsRefusedWhereABackupHasThoseNumbers(int from)
    {
        Backup();
        Rehash(from);

        AssertRefused("The backup payday-", $" has another change {Changes} than the journal.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(Changes - 1)]
    public void Open_JournalRehashedFromALineOn_IsRefusedWhereTheSnapshotHasThatNumber(int from)
    {
        KeepSnapshot();
        Rehash(from);

        AssertRefused($"The snapshot has another change {Changes} than the journal.");
    }

    [Fact]
    public void Open_SnapshotThatClaimsTheRehashedLine_IsHeldAgainstWhatThatComesTo()
    {
        KeepSnapshot();
        Snapshot told = SnapshotFile.TryRead(Folder)!;
        Rehash(2);
        JournalScan journal = JournalScan.Read(Folder.Journal);
        SnapshotFile.TryWrite(Folder, told with { Place = new JournalPlace(journal.Last!.Number, journal.Last.Sha, journal.Length) });

        AssertRefused($"The snapshot holds something else than the journal came to at change {Changes}.");
    }

    [Fact]
    public void Open_WhatElseIsThereBearsTheJournalOut_IsRebuilt()
    {
        Backup();
        KeepSnapshot();
        using (BookStore store = BookStore.Open(Folder))
        {
            store.Save(new BookChange { Movements = Samples.Incomes(2) });
        }

        File.Delete(Folder.Database);

        using BookStore again = BookStore.Open(Folder);
        Assert.EndsWith("; nothing is lost.", Assert.Single(again.Told()), StringComparison.Ordinal);
        Assert.Equal(Changes + 1, again.LastChange);
    }

    [Fact]
    public void Open_BackupsOfAPastThatThePersonLeft_DoNotStandInTheWay()
    {
        File.WriteAllBytes(Folder.Journal, journals[2]);
        File.Delete(Folder.Database);
        BookStore.Open(Folder).Dispose();
        Backup();
        string early = Directory.GetFiles(Folder.Backups).Single();
        Change(3);
        Backup();
        using (Restoring restoring = Restoring.Begin(Folder))
        {
            restoring.Put(restoring.Find(early)!);
        }

        Change(5);
        string before = Text();
        File.Delete(Folder.Database);

        AssertIs(before);
    }

    [Fact]
    public void Open_JournalBegunAnewSince_IsRebuiltBesideBackupsOfBefore()
    {
        Backup();
        Change(2);
        File.Delete(Folder.Journal);
        Directory.Move(Folder.Backups, Folder.Backups + "-away");
        BookStore.Open(Folder).Dispose();
        Directory.Move(Folder.Backups + "-away", Folder.Backups);
        string before = Text();
        File.Delete(Folder.Database);

        AssertIs(before);
    }

    public void Dispose() => scratch.Dispose();

    private void Cut()
    {
        File.Delete(Folder.Database);
        File.WriteAllBytes(Folder.Journal, journals[^2]);
    }

    private void Backup()
    {
        using BookStore store = BookStore.Open(Folder);
        StoreBackups.Make(store, null);
    }

    private void KeepSnapshot()
    {
        using BookStore store = BookStore.Open(Folder with { Snapshots = new SnapshotWish(1, 1) });
        store.Load();
    }

    private void Change(int incomes)
    {
        using BookStore store = BookStore.Open(Folder);
        store.Save(new BookChange { Movements = Samples.Incomes(incomes) });
    }

    private string Text()
    {
        using BookStore store = BookStore.Open(Folder);
        return Samples.Text(store.Load());
    }

    // The same journal with another amount from a line on, and all hashes and digests right again.
    private void Rehash(int from)
    {
        File.Delete(Folder.Database);
        JournalScan scan = JournalScan.Read(Folder.Journal);
        var content = new BookContent();
        using var bytes = new MemoryStream();
        JournalLine? before = null;
        foreach ((int i, JournalLine line) in scan.Lines.Index())
        {
            List<Edit> edits = [.. line.Edits()];
            if (i == from)
            {
                Edit movement = edits.First(edit => edit.Collection == CollectionNames.Movements);
                movement.Document!["reason"] = "something else";
            }

            edits.ForEach(content.Apply);
            before = i < from ? line : JournalLine.Make(before, edits, content.Digest, DateTimeOffset.UnixEpoch, line.Book);
            bytes.Write(before.Text.Span);
            bytes.WriteByte((byte)'\n');
        }

        File.WriteAllBytes(Folder.Journal, bytes.ToArray());
        Assert.True(JournalScan.Read(Folder.Journal).IsWhole);
    }

    private void AssertRefused(params string[] told)
    {
        byte[]? journal = File.Exists(Folder.Journal) ? File.ReadAllBytes(Folder.Journal) : null;
        string message = Assert.Throws<StoreException>(() => BookStore.Open(Folder)).Said();
        Assert.All(told, part => Assert.Contains(part, message, StringComparison.Ordinal));
        Assert.DoesNotContain("nothing is lost", message, StringComparison.Ordinal);
        Assert.Equal(journal ?? [], File.ReadAllBytes(Folder.Journal));
    }

    private void AssertIs(string book) => Assert.Equal(book, Text());
}
