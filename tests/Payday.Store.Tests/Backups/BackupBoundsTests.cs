using System.IO.Compression;
using Payday.Store.Backups;
using Payday.Store.Checks;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Restores;
using Payday.Store.Snapshots;
using Payday.Store.Tests.Books;
using Payday.Texts;

namespace Payday.Store.Tests.Backups;

/// <summary>Small files that come to gigabytes, and large ones: refused in a sentence before they fill the memory.</summary>
public sealed class BackupBoundsTests : IDisposable
{
    private const long Enough = 200_000_000;
    private readonly ScratchFolder scratch = new();

    [Fact]
    public void Read_OneEndlessLine_IsRefusedEarly()
    {
        Assert.Equal("unpacks to more than 537 MB or to lines longer than any of a journal, so it is no backup", Unfit(Bomb([0], 3_000)));
        Assert.InRange(GC.GetTotalMemory(forceFullCollection: true), 0, Enough);
    }

    [Fact]
    public void Read_ManyShortLines_IsRefusedOnceTheyAreTooMany() =>
        Assert.Equal("unpacks to more than 537 MB or to lines longer than any of a journal, so it is no backup", Unfit(Bomb([.. "{}\n"u8], 600)));

    [Fact]
    public void Open_SuchABackupThatClaimsToGoFurther_GoesOnAndTheCheckNamesIt()
    {
        Samples.Begun(scratch.Data).Dispose();
        Directory.CreateDirectory(scratch.Data.Backups);
        string path = Path.Combine(scratch.Data.Backups, "payday-20990101T000000Z-99.journal.gz");
        File.Move(Bomb([0], 1_000), path);

        using (BookStore store = BookStore.Open(scratch.Data))
        {
            Assert.NotNull(store.Load());
        }

        Assert.StartsWith($"{path} unpacks to more than ", Assert.Single(StoreCheck.Run(scratch.Data).Findings, one => one.Part == CheckPart.Backups).Said(), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_JournalOfGigabytes_IsRefusedInASentence()
    {
        Samples.Begun(scratch.Data).Dispose();
        using (FileStream file = File.OpenWrite(scratch.Data.Journal))
        {
            file.SetLength(5_000_000_000);
        }

        string expected = $"{scratch.Data.Journal} has 5,000 MB, and a journal has no more than 537. Nothing was changed; see whether it is the right file.";
        Assert.Equal(expected, Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data)).Said());
        Assert.Equal(expected, Assert.Throws<StoreException>(() => StoreCheck.Run(scratch.Data)).Said());
        Assert.Equal(expected, Assert.Throws<StoreException>(() => BookStore.Peek(scratch.Data)).Said());
        using Restoring restoring = Restoring.Begin(scratch.Data);
        Assert.Equal([Candidate.Database], restoring.List().Select(one => one.Choice));
    }

    [Fact]
    public void TryRead_SnapshotOfGigabytes_IsPassedOver()
    {
        Samples.Begun(scratch.Data).Dispose();
        using (FileStream file = File.Create(scratch.Data.Snapshot))
        {
            file.SetLength(5_000_000_000);
        }

        Assert.Null(SnapshotFile.TryRead(scratch.Data));
        using BookStore store = BookStore.Open(scratch.Data);
        Assert.NotNull(store.Load());
    }

    public void Dispose() => scratch.Dispose();

    private static string Unfit(string path) => BackupTexts.Of(Assert.IsType<BackupReading.Unfit>(BackupFiles.Read(path)).Why);

    // So many megabytes of a pattern.
    private string Bomb(byte[] pattern, int megabytes)
    {
        byte[] piece = new byte[999_999];
        for (int i = 0; i < piece.Length; i++)
        {
            piece[i] = pattern[i % pattern.Length];
        }

        string path = scratch.Path("bomb.gz");
        using var packed = new GZipStream(File.Create(path), CompressionLevel.Fastest);
        for (int i = 0; i < megabytes; i++)
        {
            packed.Write(piece);
        }

        return path;
    }
}
