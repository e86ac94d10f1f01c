using LiteDB;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

public sealed class StoreFaultsTests
{
    private static readonly StoreFolder Folder = new(OperatingSystem.IsWindows() ? @"C:\home\data" : "/home/data");

    public static TheoryData<string, Exception, string> Faults => new()
    {
        { nameof(StoreAction.Open), new UnauthorizedAccessException("Access to the path is denied."), "Payday may not open its files in DIR. Nothing was changed; change the permissions of the folder and its files, or choose another folder with --data." },
        { nameof(StoreAction.Write), new UnauthorizedAccessException("Access to the path is denied."), "Payday may not write in DIR. Nothing was changed; change the permissions of the folder and its files, or choose another folder with --data." },
        { nameof(StoreAction.Open), new PathTooLongException(), "DIR can't be made a folder. Choose another with --data." },
        { nameof(StoreAction.Open), new DirectoryNotFoundException(), "DIR can't be made a folder. Choose another with --data." },
        { nameof(StoreAction.Open), new IOException("Not a directory", 20), "DIR can't be made a folder. Choose another with --data." },
        { nameof(StoreAction.Write), new IOException("No space left on device", 28), "The disk that holds DIR is full. Nothing was changed; free some room and try again." },
        { nameof(StoreAction.Write), new IOException("Disk quota exceeded", 122), "The disk that holds DIR is full. Nothing was changed; free some room and try again." },
        { nameof(StoreAction.Open), new IOException("Read-only file system", 30), "The disk that holds DIR is read-only. Nothing was changed; make it writable, or choose a folder on another with --data." },
        { nameof(StoreAction.Read), new IOException("Input/output error", 5), "The disk that holds DIR failed when Payday tried to read there. Nothing was changed; check the disk and try again." },
        { nameof(StoreAction.Read), new EndOfStreamException(), "DB is damaged. Nothing was changed; keep a copy of the folder, then put back a copy from before." },
        { nameof(StoreAction.Read), new LiteException(0, "Detected loop in FindAll"), "DB is damaged. Nothing was changed; keep a copy of the folder, then put back a copy from before." },
        { nameof(StoreAction.Read), new InvalidCastException(), "DB is damaged. Nothing was changed; keep a copy of the folder, then put back a copy from before." },
        { nameof(StoreAction.Write), new NotImplementedException(), "What you entered could not be stored in DIR. Nothing was changed; close Payday, open it again and look before you enter it once more." },
        { nameof(StoreAction.Write), new LiteException(0, "Cannot insert duplicate key"), "What you entered could not be stored in DIR. Nothing was changed; close Payday, open it again and look before you enter it once more." },
    };

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void Explained_FaultOfDiskOrDatabase_SaysWhatWhereAndWhatToDo(string action, Exception fault, string expected)
    {
        expected = expected.Replace("DIR", Folder.Path, StringComparison.Ordinal).Replace("DB", Folder.Database, StringComparison.Ordinal);

        var told = Assert.Throws<StoreException>(() => StoreFaults.Explained<int>(Folder, Enum.Parse<StoreAction>(action), () => throw fault));

        Assert.Equal(expected, told.Said());
        Assert.Same(fault, told.InnerException);
    }

    [Fact]
    public void Explained_ExplainedAlready_GoesThroughAsItIs()
    {
        var fault = new StoreException(new FolderFault.NoLocks("It is Tuesday."));

        Assert.Same(fault, Assert.Throws<StoreException>(() => StoreFaults.Explained<int>(Folder, StoreAction.Open, () => throw fault)));
    }
}
