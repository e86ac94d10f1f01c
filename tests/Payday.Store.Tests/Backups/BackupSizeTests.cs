using System.IO.Compression;
using Payday.Store.Backups;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Backups;

public sealed class BackupSizeTests : IDisposable
{
    private readonly DirectoryInfo scratch = Directory.CreateTempSubdirectory("payday-test-");

    // A packed file may hold thousands of times its size: what is beyond any journal is not even unpacked.
    [Fact]
    public void TryRead_UnpackingToMoreThanAllowed_IsNoBackup()
    {
        var folder = new StoreFolder(scratch.FullName);
        using BookStore store = BookStore.Open(folder);
        store.Save(Samples.Beginning);
        BackupFile made = StoreBackups.Make(store, null);
        int length = (int)new FileInfo(folder.Journal).Length;

        Assert.NotNull(BackupFiles.TryRead(made.Path, length));
        Assert.Null(BackupFiles.TryRead(made.Path, length - 1));
    }

    [Fact]
    public void TryRead_AFileMadeToUnpackWithoutEnd_StopsAtWhatIsAllowed()
    {
        string path = Path.Combine(scratch.FullName, "payday-20260306T100000Z-5.journal.gz");
        using (var packed = new GZipStream(File.Create(path), CompressionLevel.Fastest))
        {
            byte[] nothing = new byte[1 << 20];
            for (int i = 0; i < 256; i++)
            {
                packed.Write(nothing);
            }
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Null(BackupFiles.TryRead(path, 1 << 20));

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 16 << 20);
    }

    public void Dispose() => scratch.Delete(recursive: true);
}
