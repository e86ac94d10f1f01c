using System.Diagnostics;
using System.Globalization;
using Payday.Store.Changes;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

public sealed class BookLockTests
{
    [Fact]
    public void Open_TwiceInOneProcess_IsRefusedUntilTheFirstIsClosed()
    {
        using var scratch = new ScratchFolder();
        using (Samples.Begun(scratch.Data))
        {
            AssertTaken(scratch.Data, Environment.ProcessId);
        }

        using BookStore again = BookStore.Open(scratch.Data);
        Assert.NotNull(again.Load());
    }

    [Fact]
    public void Open_WhileAnotherProcessHasIt_IsRefusedUntilThatIsKilled()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        using Process child = ChildProcess.StartHolding(scratch.Data);
        Assert.Equal("open", child.StandardOutput.ReadLine());

        AssertTaken(scratch.Data, child.Id);

        child.Kill();
        child.WaitForExit();
        Assert.True(File.Exists(scratch.Data.Holder));
        using BookStore store = BookStore.Open(scratch.Data);
        Assert.NotNull(store.Load());
    }

    [Fact]
    public void Open_Refused_LeavesTheHolderWhatItHas()
    {
        using var scratch = new ScratchFolder();
        using BookStore store = Samples.Begun(scratch.Data);
        for (int i = 0; i < 3; i++)
        {
            AssertTaken(scratch.Data, Environment.ProcessId);
        }

        store.Save(new BookChange { Movements = Samples.Incomes(2) });
        Assert.NotNull(store.Load());
    }

    [Fact]
    public void Open_WhereFilesCannotBeLocked_IsRefusedAndMakesNothing()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows always locks.");
        using var scratch = new ScratchFolder();
        using Process child = ChildProcess.StartHoldingWithoutLocks(scratch.Data);

        Assert.Equal(
            $"Files in {scratch.Data.Path} can't be locked, so two programs could write there at once. Nothing was changed; choose a folder on a local disk with --data.",
            child.StandardOutput.ReadLine());
        child.WaitForExit();
        Assert.False(scratch.Data.HasBook);
    }

    private static void AssertTaken(StoreFolder folder, int process)
    {
        string message = Assert.Throws<StoreException>(() => BookStore.Open(folder)).Said();

        Assert.StartsWith(
            string.Create(CultureInfo.InvariantCulture, $"Another Payday has {folder.Path} open (process {process}, since 20"), message, StringComparison.Ordinal);
        Assert.EndsWith("). Close it there and try again.", message, StringComparison.Ordinal);
    }
}
