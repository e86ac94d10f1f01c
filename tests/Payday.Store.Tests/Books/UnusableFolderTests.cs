using Payday.Store.Changes;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

public sealed class UnusableFolderTests
{
    [Fact]
    public void Open_FolderThatIsAFile_SaysSo()
    {
        using var scratch = new ScratchFolder();
        File.WriteAllText(scratch.Data.Path, "letter");

        AssertRefused(scratch.Data, $"{scratch.Data.Path} is a file, not a folder. Choose another with --data.");
        Assert.Equal("letter", File.ReadAllText(scratch.Data.Path));
    }

    [Fact]
    public void Open_FolderBelowAFile_SaysSo()
    {
        using var scratch = new ScratchFolder();
        File.WriteAllText(scratch.Path("letter"), "letter");
        var folder = new StoreFolder(scratch.Path("letter/data"));

        AssertRefused(folder, $"{folder.Path} can't be made a folder. Choose another with --data.");
    }

    [Fact]
    public void Open_NameTooLong_SaysSo()
    {
        using var scratch = new ScratchFolder();
        var folder = new StoreFolder(scratch.Path(new string('x', 300)));

        AssertRefused(folder, $"{folder.Path} can't be made a folder. Choose another with --data.");
    }

    [Fact]
    public void Open_ReadOnlyDisk_SaysSo()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        using Mount mount = Mount.ReadOnly(scratch.Data.Path);

        AssertRefused(scratch.Data, $"The disk that holds {scratch.Data.Path} is read-only. Nothing was changed; make it writable, or choose a folder on another with --data.");
    }

    [Fact]
    public void Open_ReadOnlyFile_SaysSo()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        using Mount mount = Mount.ReadOnly(scratch.Data.Database);

        AssertRefused(scratch.Data, $"The disk that holds {scratch.Data.Path} is read-only. Nothing was changed; make it writable, or choose a folder on another with --data.");
    }

    [Theory]
    [InlineData(0b101_000_000, "")]
    [InlineData(0b100_000_000, "payday.db")]
    [InlineData(0b000_000_000, "payday.db")]
    public void Open_WithoutPermission_SaysSo(int mode, string file)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");
        Assert.SkipWhen(Environment.IsPrivilegedProcess, "Permissions don't bind root.");
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        File.Delete(scratch.Data.Lock);
        string path = file.Length == 0 ? scratch.Data.Path : Path.Combine(scratch.Data.Path, file);
        if (!OperatingSystem.IsWindows())
        {
            UnixFileMode before = File.GetUnixFileMode(path);
            File.SetUnixFileMode(path, (UnixFileMode)mode);
            AssertRefused(scratch.Data, $"Payday may not open its files in {scratch.Data.Path}. Nothing was changed; change the permissions of the folder and its files, or choose another folder with --data.");
            File.SetUnixFileMode(path, before);
        }
    }

    [Fact]
    public void Open_FullDisk_SaysSoAndLeavesNothing()
    {
        using var scratch = new ScratchFolder();
        using Mount disk = Mount.SmallDisk(scratch.Path("disk"), 16);
        var folder = new StoreFolder(scratch.Path("disk/data"));

        AssertRefused(folder, $"The disk that holds {folder.Path} is full. Nothing was changed; free some room and try again.");
        Assert.False(folder.HasBook);
    }

    [Fact]
    public void Save_DiskFullAtAnyMoment_StoresAllOrNothingAndGoesOnOnceThereIsRoom()
    {
        using var scratch = new ScratchFolder();
        using Mount disk = Mount.SmallDisk(scratch.Path("disk"), 2_000);
        var folder = new StoreFolder(scratch.Path("disk/data"));
        string ballast = scratch.Path("disk/ballast");
        using BookStore store = Samples.Begun(folder);
        int stored = Samples.Beginning.Movements.Length;
        int refused = 0;
        for (int kilobytes = 0; kilobytes <= 160; kilobytes += 4)
        {
            FillUpTo(ballast, scratch.Path("disk"), kilobytes);
            try
            {
                store.Save(new BookChange { Movements = Samples.Incomes(60) });
                stored += 60;
            }
            catch (StoreException fault)
            {
                Assert.Equal($"The disk that holds {folder.Path} is full. Nothing was changed; free some room and try again.", fault.Said());
                refused++;
            }

            Assert.Equal(stored, store.Load()!.Ledger.Movements.Count);
            File.Delete(ballast);
            store.Save(new BookChange { Movements = Samples.Incomes(1) });
            stored++;
        }

        Assert.InRange(refused, 5, 35);
        store.Dispose();

        // What a failed commit left in memory must not end the process when it is collected.
        GC.Collect();
        GC.WaitForPendingFinalizers();
        using BookStore again = BookStore.Open(folder);
        Assert.Equal(stored, again.Load()!.Ledger.Movements.Count);
    }

    // Writes until the disk has so much room left.
    private static void FillUpTo(string ballast, string disk, int kilobytesLeft)
    {
        long room = new DriveInfo(disk).AvailableFreeSpace - (kilobytesLeft * 1024L);
        File.WriteAllBytes(ballast, new byte[Math.Max(0, room)]);
    }

    private static void AssertRefused(StoreFolder folder, string message) =>
        Assert.Equal(message, Assert.Throws<StoreException>(() => BookStore.Open(folder)).Said());
}
