using Payday.Store.Checks;
using Payday.Store.Folders;
using Payday.Store.Tests.Books;
using Payday.Texts;

namespace Payday.Store.Tests.Checks;

public sealed class FilePermissionsTests : IDisposable
{
    private const UnixFileMode ForAll = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.OtherRead;
    private readonly ScratchFolder scratch = new();

    public FilePermissionsTests()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no Unix permissions.");
        Samples.Begun(scratch.Data).Dispose();
        Directory.CreateDirectory(scratch.Path("elsewhere"));
        File.WriteAllText(scratch.Path("elsewhere/page.html"), "for all to read");
        Permit(scratch.Path("elsewhere/page.html"), ForAll);
        Permit(scratch.Path("elsewhere"), ForAll | UnixFileMode.UserExecute | UnixFileMode.OtherExecute);
    }

    [Theory]
    [InlineData("payday (copy).db", "elsewhere/page.html")]
    [InlineData("payday-old.journal", "elsewhere")]
    [InlineData("backups", "elsewhere")]
    [InlineData("aside", "elsewhere")]
    [InlineData("backups/payday-20260306T100000Z-1.journal.gz", "elsewhere/page.html")]
    [InlineData("backups/old", "elsewhere")]
    [InlineData("aside/old", "elsewhere/page.html")]
    public void Mend_LinkInTheFolder_LeavesWhatItPointsToAsItIs(string link, string target)
    {
        string path = Path.Combine(scratch.Data.Path, link);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.CreateSymbolicLink(path, scratch.Path(target));

        StoreCheck.Mend(scratch.Data);

        Assert.Equal(ForAll, Mode("elsewhere/page.html"));
        Assert.Equal(ForAll | UnixFileMode.UserExecute | UnixFileMode.OtherExecute, Mode("elsewhere"));
        Assert.DoesNotContain(StoreCheck.Run(scratch.Data).Findings, finding => finding.Part == CheckPart.Files);
    }

    [Fact]
    public void Mend_LinkToNowhere_IsNoFailingDisk()
    {
        File.CreateSymbolicLink(Path.Combine(scratch.Data.Path, "payday-old.journal"), "/nowhere");
        File.CreateSymbolicLink(Path.Combine(scratch.Data.Path, "notes"), "/nowhere");

        StoreCheck.Mend(scratch.Data);
        Assert.Empty(StoreCheck.Run(scratch.Data).Findings);
    }

    [Fact]
    public void Mend_FolderThatHoldsMoreThanPayday_LeavesTheRestAlone()
    {
        string other = Path.Combine(scratch.Data.Path, "holiday.txt");
        File.WriteAllText(other, "mine");
        Permit(other, ForAll);
        Permit(scratch.Data.Journal, ForAll);

        Assert.Equal([$"{scratch.Data.Journal} is now readable by you alone."], StoreCheck.Mend(scratch.Data).Select(StoreTexts.Of));
        Assert.Equal(ForAll, OperatingSystem.IsWindows() ? ForAll : File.GetUnixFileMode(other));
        Assert.Empty(StoreCheck.Run(scratch.Data).Findings);
    }

    [Fact]
    public void Mend_FolderNamedThroughALink_ClosesTheFolderItself()
    {
        Permit(scratch.Data.Path, ForAll | UnixFileMode.UserExecute | UnixFileMode.OtherExecute);
        File.CreateSymbolicLink(scratch.Path("link"), scratch.Data.Path);
        var folder = new StoreFolder(scratch.Path("link"));

        Assert.Contains(StoreCheck.Run(folder).Findings, finding => finding.Then.IsMendable);
        StoreCheck.Mend(folder);

        Assert.Empty(StoreCheck.Run(folder).Findings);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, Mode("data"));
    }

    public void Dispose() => scratch.Dispose();

    private static void Permit(string path, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, mode);
        }
    }

    private UnixFileMode Mode(string name) => OperatingSystem.IsWindows() ? default : File.GetUnixFileMode(scratch.Path(name));
}
