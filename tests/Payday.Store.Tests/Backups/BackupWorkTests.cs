using Payday.Store.Backups;
using Payday.Store.Changes;
using Payday.Store.Fields;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Backups;

public sealed class BackupWorkTests : IDisposable
{
    private readonly ScratchFolder scratch = new();

    [Fact]
    public void Save_ClosedPayday_LeavesABackupOfWhatWasBeforeIt()
    {
        using BookStore store = Samples.Begun(scratch.Data);
        store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 1)] });
        store.Save(new BookChange { Movements = Samples.Incomes(3) });

        store.FinishBackups();

        BackupFile backup = Assert.Single(BackupFiles.List(scratch.Data.Backups));
        Assert.Equal(1, backup.Number);
        Assert.Equal(1, BackupFiles.TryRead(backup.Path)!.Last!.Number);
        Assert.Empty(store.Told());
    }

    [Fact]
    public void Save_ManyClosedPaydaysAtOnce_LeavesABackupOfTheLast()
    {
        using (BookStore store = Samples.Begun(scratch.Data))
        {
            for (int i = 0; i < 20; i++)
            {
                store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday.PlusWeeks(2 * i), 1, 1)] });
            }
        }

        Assert.Equal(20, BackupFiles.Newest(scratch.Data)!.Number);
    }

    [Fact]
    public void Save_ClosedPaydayWithoutRoomForTheBackup_IsStoredAndSaidOnce()
    {
        using BookStore store = Samples.Begun(scratch.Data);
        File.WriteAllText(scratch.Data.Backups, "in the way");

        store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 1)] });
        store.FinishBackups();

        Assert.Single(store.Load()!.Closed);
        string notice = Assert.Single(store.Told());
        Assert.Contains("no backup", notice, StringComparison.Ordinal);
        Assert.Equal(notice, Assert.Single(store.Told()));
    }

    public void Dispose() => scratch.Dispose();
}
