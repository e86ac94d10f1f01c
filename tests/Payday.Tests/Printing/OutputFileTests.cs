using Payday.Core.Amounts;
using Payday.Printing;

namespace Payday.Tests.Printing;

public sealed class OutputFileTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    [Fact]
    public void Write_NewFile_IsWholeAndTheOwnersAlone()
    {
        string path = folder.In("slip.pdf");
        Assert.Equal(path, OutputFile.Write(path, "text"u8, replace: false).Value);
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
        Assert.Equal($"{path} is already there; give another name, or say that it may be replaced.", OutputFile.Write(path, "new"u8, replace: false).Fault);
        Assert.Equal("old and longer", File.ReadAllText(path));
        Assert.True(OutputFile.Write(path, "new"u8, replace: true).Ok);
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFileSystemEntries(folder.Path));
    }

    [Fact]
    public void Write_MissingFolder_SaysWhich()
    {
        string path = folder.In("none/slip.pdf");
        Assert.Equal($"There is no folder {folder.In("none")}; make it first or choose another.", OutputFile.Write(path, "x"u8, replace: true).Fault);
    }

    [Fact]
    public void Write_OntoAFolder_IsRefused() =>
        Assert.Equal($"{folder.Path} is a folder; give the name of a file in it.", OutputFile.Write(folder.Path, "x"u8, replace: true).Fault);

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("a\nb.pdf")]
    [InlineData("a\0b.pdf")]
    public void Write_UnusableName_IsRefused(string path) =>
        Assert.Equal("A file name is missing or holds control characters; give a plain one.", OutputFile.Write(path, "x"u8, replace: true).Fault);

    [Fact]
    public void Write_DanglingLink_IsRefusedUnlessReplaced()
    {
        string path = folder.In("slip.pdf");
        File.CreateSymbolicLink(path, folder.In("nowhere"));
        Assert.False(OutputFile.Write(path, "x"u8, replace: false).Ok);
        Assert.True(OutputFile.Write(path, "x"u8, replace: true).Ok);
        Assert.False(File.Exists(folder.In("nowhere")));
    }

    [Fact]
    public void Write_OntoADevice_IsRefused()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Devices are files on Unix.");
        Assert.Equal("/dev/null is a device; give the name of a file.", OutputFile.Write("/dev/null", "x"u8, replace: true).Fault);
    }

    [Fact]
    public void Write_FolderWithoutPermission_SaysSo()
    {
        // The kernel's folder: not even root makes a file there.
        Assert.SkipUnless(Directory.Exists("/sys/kernel"), "Needs a folder nobody can write to.");
        Read<string> written = OutputFile.Write("/sys/kernel/slip.pdf", "x"u8, replace: false);
        Assert.StartsWith("/sys/kernel/slip.pdf can't be written, ", written.Fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NameTooLong_LeavesNothingBehind()
    {
        Read<string> written = OutputFile.Write(folder.In(new string('a', 300)), "x"u8, replace: false);
        Assert.False(written.Ok);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }

    public void Dispose() => folder.Dispose();
}
