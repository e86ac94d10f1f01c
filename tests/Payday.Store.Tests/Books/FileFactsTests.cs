using System.Diagnostics;
using Payday.Store.Files;

namespace Payday.Store.Tests.Books;

public sealed class FileFactsTests : IDisposable
{
    private readonly DirectoryInfo scratch = Directory.CreateTempSubdirectory("payday-test-");

    public FileFactsTests() => Assert.SkipUnless(OperatingSystem.IsLinux(), "The facts are those that Linux tells.");

    [Theory]
    [InlineData("file", FileKind.File)]
    [InlineData("to-file", FileKind.File)]
    [InlineData("folder", FileKind.Folder)]
    [InlineData("to-folder", FileKind.Folder)]
    [InlineData("pipe", FileKind.Pipe)]
    [InlineData("/dev/zero", FileKind.Device)]
    [InlineData("none", FileKind.None)]
    [InlineData("to-nothing", FileKind.None)]
    [InlineData("file/none", FileKind.Blocked)]
    [InlineData("round", FileKind.Blocked)]
    public void Behind_EachSort_IsTold(string name, FileKind kind)
    {
        File.WriteAllText(In("file"), "text");
        Directory.CreateDirectory(In("folder"));
        File.CreateSymbolicLink(In("to-file"), In("file"));
        Directory.CreateSymbolicLink(In("to-folder"), In("folder"));
        File.CreateSymbolicLink(In("to-nothing"), In("none"));
        File.CreateSymbolicLink(In("round"), In("round"));
        using (Process made = Process.Start("mkfifo", [In("pipe")]))
        {
            made.WaitForExit();
        }

        Assert.Equal(kind, FileFacts.Behind(In(name)).Kind);
    }

    // What stat(1) of GNU coreutils says of the same file.
    [Fact]
    public void Behind_AFile_IsWhatTheSystemsOwnProgramSays()
    {
        File.WriteAllText(In("file"), "text");
        using Process process = Process.Start(new ProcessStartInfo("stat", ["-c", "%i %u", In("file")]) { RedirectStandardOutput = true })!;
        string said = process.StandardOutput.ReadToEnd().Trim();
        process.WaitForExit();

        FileFacts facts = FileFacts.Behind(In("file"));

        Assert.Equal(said, $"{facts.Identity.Inode} {facts.Owner}");
    }

    [Fact]
    public void AreSame_LinksOfAllKinds_AreWhatTheyLeadTo()
    {
        File.WriteAllText(In("file"), "text");
        File.CreateSymbolicLink(In("soft"), In("file"));
        using (Process made = Process.Start("ln", [In("file"), In("hard")]))
        {
            made.WaitForExit();
        }

        File.WriteAllText(In("other"), "text");

        Assert.True(FileFacts.AreSame(In("file"), In("soft")));
        Assert.True(FileFacts.AreSame(In("file"), In("hard")));
        Assert.False(FileFacts.AreSame(In("file"), In("other")));
        Assert.False(FileFacts.AreSame(In("none"), In("none")));
    }

    public void Dispose() => scratch.Delete(recursive: true);

    private string In(string name) => Path.Combine(scratch.FullName, name);
}
