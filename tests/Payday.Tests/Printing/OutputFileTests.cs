using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Printing;
using Payday.Store.Folders;

namespace Payday.Tests.Printing;

public sealed class OutputFileTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    [Fact]
    public void Write_NewFile_IsWholeAndTheOwnersAlone()
    {
        string path = folder.In("slip.pdf");
        Assert.Equal(path, OutputFile.Write(null, path, "text"u8.ToArray(), replace: false).Value);
        Assert.Equal("text", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFileSystemEntries(folder.Path));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
        }
    }

    [Fact]
    public void Write_FileAlreadyThere_IsReplacedOnlyWhenSaid()
    {
        string path = folder.In("slip.pdf");
        File.WriteAllText(path, "old and longer");
        Assert.Equal($"{path} is already there; give another name, or say that it may be replaced.", OutputFile.Write(null, path, "new"u8.ToArray(), replace: false).Fault);
        Assert.Equal("old and longer", File.ReadAllText(path));
        Assert.True(OutputFile.Write(null, path, "new"u8.ToArray(), replace: true).Ok);
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFileSystemEntries(folder.Path));
    }

    [Fact]
    public void Write_MissingFolder_SaysWhich()
    {
        string path = folder.In("none/slip.pdf");
        Assert.Equal($"There is no folder {folder.In("none")}; make it first or choose another.", OutputFile.Write(null, path, "x"u8.ToArray(), replace: true).Fault);
    }

    [Fact]
    public void Write_OntoAFolder_IsRefused() =>
        Assert.Equal($"{folder.Path} is a folder; give the name of a file in it.", OutputFile.Write(null, folder.Path, "x"u8.ToArray(), replace: true).Fault);

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("a\nb.pdf")]
    [InlineData("a\0b.pdf")]
    public void Write_UnusableName_IsRefused(string path) =>
        Assert.Equal("A file name is missing or holds control characters; give a plain one.", OutputFile.Write(null, path, "x"u8.ToArray(), replace: true).Fault);

    [Fact]
    public void Write_DanglingLink_IsRefusedUnlessReplaced()
    {
        string path = folder.In("slip.pdf");
        File.CreateSymbolicLink(path, folder.In("nowhere"));
        Assert.False(OutputFile.Write(null, path, "x"u8.ToArray(), replace: false).Ok);
        Assert.True(OutputFile.Write(null, path, "x"u8.ToArray(), replace: true).Ok);
        Assert.False(File.Exists(folder.In("nowhere")));
    }

    [Fact]
    public void Write_OntoADevice_IsRefused()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Devices are files on Unix.");
        Assert.Equal("/dev/null is a device; give the name of a file.", OutputFile.Write(null, "/dev/null", "x"u8.ToArray(), replace: true).Fault);
    }

    [Fact]
    public void Write_FolderWithoutPermission_SaysSo()
    {
        // The kernel's folder: not even root makes a file there.
        Assert.SkipUnless(Directory.Exists("/sys/kernel"), "Needs a folder nobody can write to.");
        Result<string> written = OutputFile.Write(null, "/sys/kernel/slip.pdf", "x"u8.ToArray(), replace: false);
        Assert.StartsWith("/sys/kernel/slip.pdf can't be written, ", written.Fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NameTooLong_LeavesNothingBehind()
    {
        Result<string> written = OutputFile.Write(null, folder.In(new string('a', 300)), "x"u8.ToArray(), replace: false);
        Assert.False(written.Ok);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }

    [Theory]
    [InlineData("data/payday.db")]
    [InlineData("data/slip.pdf")]
    [InlineData("data/backups/slip.pdf")]
    [InlineData("link/payday.journal")]
    [InlineData("link/backups/slip.pdf")]
    [InlineData("deep/slip.pdf")]
    [InlineData("other/../data/./slip.pdf")]
    public void Write_AmongTheStoresOwnFiles_IsRefusedByWhateverPath(string name)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Which folder it is, whatever its path, is known on Linux.");
        var own = new StoreFolder(folder.In("data"));
        Directory.CreateDirectory(own.Backups);
        Directory.CreateDirectory(folder.In("other"));
        Directory.CreateSymbolicLink(folder.In("link"), own.Path);
        Directory.CreateSymbolicLink(folder.In("deep"), own.Backups);
        File.WriteAllText(own.Database, "kept");
        File.WriteAllText(own.Journal, "kept");

        Result<string> written = OutputFile.Write(own, folder.In(name), "x"u8.ToArray(), replace: true);

        Assert.Equal($"{Path.GetFullPath(folder.In(name))} is in the folder of Payday's own files; choose another.", written.Fault);
        Assert.Equal(["kept", "kept"], [File.ReadAllText(own.Database), File.ReadAllText(own.Journal)]);
        Assert.True(OutputFile.Write(own, folder.In("other/slip.pdf"), "x"u8.ToArray(), replace: false).Ok);
    }

    [Fact]
    public void WriteAll_OneThatCannotBe_LeavesAllAsItWas()
    {
        File.WriteAllText(folder.In("a"), "old");
        Directory.CreateDirectory(folder.In("c"));
        string[] before = Directory.GetFileSystemEntries(folder.Path);
        (string, byte[])[] files = [(folder.In("a"), "new"u8.ToArray()), (folder.In("b"), "new"u8.ToArray()), (folder.In("c"), "new"u8.ToArray())];

        Assert.False(OutputFile.WriteAll(null, files, replace: true).Ok);
        Assert.False(OutputFile.WriteAll(null, [.. files[..2], (folder.In(new string('d', 300)), [])], replace: true).Ok);

        Assert.Equal(before, Directory.GetFileSystemEntries(folder.Path));
        Assert.Equal("old", File.ReadAllText(folder.In("a")));
    }

    [Fact]
    public void TakeBack_AfterItReplaced_BringsTheOldOneBack()
    {
        File.WriteAllText(folder.In("a"), "old");
        var file = new NewFile(folder.In("a"), []);
        File.WriteAllText(file.Beside, "new");
        file.Place(replace: true);
        Assert.Equal("new", File.ReadAllText(folder.In("a")));

        file.TakeBack();

        Assert.Equal("old", File.ReadAllText(folder.In("a")));
        Assert.Equal([folder.In("a")], Directory.GetFileSystemEntries(folder.Path));
    }

    [Fact]
    public void Write_OntoAPipe_IsRefused()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Pipes have names on Unix.");
        using (System.Diagnostics.Process made = System.Diagnostics.Process.Start("mkfifo", [folder.In("pipe")]))
        {
            made.WaitForExit();
        }

        Assert.Equal($"{folder.In("pipe")} is a pipe; give the name of a file.", OutputFile.Write(null, folder.In("pipe"), "x"u8.ToArray(), replace: true).Fault);
    }

    public void Dispose() => folder.Dispose();
}
