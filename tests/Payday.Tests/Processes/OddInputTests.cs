using Payday.Commands;
using Payday.Tests.Commands;

namespace Payday.Tests.Processes;

/// <summary>Input that has no end or is no file, places for data that can't be used, and damaged surroundings: one sentence each, and no waiting.</summary>
public sealed class OddInputTests : IDisposable
{
    private readonly TestShell shell = new();

    public OddInputTests() => Assert.SkipUnless(OperatingSystem.IsLinux(), "Devices and pipes have names on Linux.");

    [Theory]
    [InlineData("import - </dev/zero", "standard input is larger than 50 MB; this can't be the right file.")]
    [InlineData("import /dev/zero", "/dev/zero is a device; name a file, or pass its content on with -.")]
    [InlineData("import pipe", "pipe is a pipe; name a file, or pass its content on with -.")]
    [InlineData("notes pipe", "pipe is a pipe; name a file, or pass its content on with -.")]
    [InlineData("debts /dev/zero", "/dev/zero is a device; name a file, or pass its content on with -.")]
    [InlineData("import .", ". is a folder; name a file in it.")]
    [InlineData("import big", "big is larger than 50 MB; this can't be the right file.")]
    [InlineData("import - <&-", "standard input: There is nothing in the text.")]
    [InlineData("import <(cat /dev/zero 2>/dev/null)", "/dev/fd/63 is larger than 50 MB; this can't be the right file.")]
    [InlineData("notes <(printf '[]')", "/dev/fd/63: line 1: A list stands here; write an object in { }.")]
    public void Run_InputThatIsNone_IsRefusedInOneSentence(string command, string sentence)
    {
        using (System.Diagnostics.Process made = System.Diagnostics.Process.Start("mkfifo", [shell.In("pipe")]))
        {
            made.WaitForExit();
        }

        using (FileStream big = File.Create(shell.In("big")))
        {
            big.SetLength(50_000_001);
        }

        Ended ended = BuiltProgram.Run($"payday --data data {command}", shell.In(""));

        Assert.Equal((1, "", "payday: " + sentence), (ended.Exit, ended.Out, ended.Sentences.Single()));
        Assert.False(Directory.Exists(shell.Data.Path));
    }

    [Fact]
    public void SpendList_WithoutEnd_IsRefusedInOneSentence()
    {
        ImportCommand.Import(shell.Data, DemoCommand.Household());

        Ended ended = BuiltProgram.Run("payday --data data spend --list - < <(yes '2026-03-07,4,Bus' 2>/dev/null)", shell.In(""));

        Assert.Equal((1, "payday: standard input is larger than 5 MB; this can't be the right file."), (ended.Exit, ended.Sentences.Single()));
    }

    [Theory]
    [InlineData("unset HOME XDG_DATA_HOME; ", "HOME is not set, so there is no place for your data. Set it, or name a folder with --data.")]
    [InlineData("export HOME= XDG_DATA_HOME=; ", "HOME is not set, so there is no place for your data. Set it, or name a folder with --data.")]
    [InlineData("export HOME=here XDG_DATA_HOME=; ", "HOME is here, which is no full path. Set it right, or name a folder with --data.")]
    [InlineData("export HOME=/nowhere/me XDG_DATA_HOME=; ", "HOME is /nowhere/me, which is not there. Set it right, or name a folder with --data.")]
    [InlineData("export HOME=/dev/null XDG_DATA_HOME=; ", "HOME is /dev/null, which is no folder. Set it right, or name a folder with --data.")]
    [InlineData("export HOME=/dev/null/me XDG_DATA_HOME=; ", "HOME is /dev/null/me, which is no folder. Set it right, or name a folder with --data.")]
    [InlineData("export XDG_DATA_HOME=/dev/null; ", "XDG_DATA_HOME is /dev/null, which is no folder. Set it right, or name a folder with --data.")]
    public void Run_NoPlaceForData_IsSaidAndNothingIsMadeHere(string environment, string sentence)
    {
        shell.File("h.json", Store.HouseholdFiles.HouseholdFile.Write(DemoCommand.Household()));
        string[] before = Directory.GetFileSystemEntries(shell.In(""));

        Ended import = BuiltProgram.Run(environment + "payday import h.json", shell.In(""));
        Ended status = BuiltProgram.Run(environment + "payday status", shell.In(""));
        Ended split = BuiltProgram.Run(environment + "payday split 70 --weeks 4 --unit 10", shell.In(""));

        Assert.Equal((1, "payday: " + sentence), (import.Exit, import.Sentences.Single()));
        Assert.Equal((3, "payday: " + sentence), (status.Exit, status.Sentences.Single()));
        Assert.Equal(0, split.Exit);
        Assert.Equal(before, Directory.GetFileSystemEntries(shell.In("")));
    }

    [Theory]
    [InlineData("data", "data", "is a file, not a folder. Choose another with --data.")]
    [InlineData("data", "data/deeper", "can't be a folder, as a part of that path is none. Choose another with --data.")]
    [InlineData("", "none", "yet. Look at one with payday demo, or bring your own with payday import FILE.")]
    public void Status_OfWhatCannotBeRead_Exits3(string file, string data, string part)
    {
        if (file.Length > 0)
        {
            shell.File(file, "");
        }

        Ended ended = BuiltProgram.Run($"payday --data {data} status", shell.In(""));

        Assert.Equal(3, ended.Exit);
        Assert.EndsWith(part, ended.Sentences.Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OthersFolder_IsLeftAlone()
    {
        Assert.SkipUnless(Environment.UserName == "root", "Giving a folder to another user needs root.");
        Ended ended = BuiltProgram.Run(
            "mkdir -p home/.local/share/payday && chown 12345 home/.local/share/payday && HOME=$PWD/home XDG_DATA_HOME= payday show; code=$?; ls home/.local/share/payday; exit $code", shell.In(""));

        Assert.Equal((1, ""), (ended.Exit, ended.Out));
        Assert.EndsWith("/home/.local/share/payday belongs to another user of this machine, so it is left alone. Run Payday as that user, or name a folder with --data.", ended.Sentences.Single(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mkdir home && chown 12345 home", "/home")]
    [InlineData("mkdir -p home/.local && chown 12345 home/.local", "/home/.local")]
    [InlineData("mkdir -p home/.local/share && chown 12345 home/.local/share", "/home/.local/share")]
    public void Run_OthersHome_GetsNoFolderOfOurs(string made, string others)
    {
        Assert.SkipUnless(Environment.UserName == "root", "Giving a folder to another user needs root.");
        shell.File("h.json", Store.HouseholdFiles.HouseholdFile.Write(DemoCommand.Household()));
        Ended ended = BuiltProgram.Run(
            $"{made} && find home | sort > before; HOME=$PWD/home XDG_DATA_HOME= payday import h.json; code=$?; find home | sort | diff before -; exit $code", shell.In(""));

        Assert.Equal((1, ""), (ended.Exit, ended.Out));
        Assert.EndsWith(others + " belongs to another user of this machine, so it is left alone. Run Payday as that user, or name a folder with --data.", ended.Sentences.Single(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("chmod 555 home", "import h.json", "Nothing was changed")]
    [InlineData("chmod 000 home", "import h.json", "HOME is DIR/home, which you may not look into. Change its permissions, or name a folder with --data.")]
    [InlineData("chmod 000 home", "show", "HOME is DIR/home, which you may not look into. Change its permissions, or name a folder with --data.")]
    public void Run_HomeThatIsClosed_IsSaid(string made, string line, string part)
    {
        Assert.SkipUnless(Environment.UserName == "root" && File.Exists("/usr/bin/setpriv"), "Running as another user needs root and setpriv.");
        shell.File("h.json", Store.HouseholdFiles.HouseholdFile.Write(DemoCommand.Household()));
        Ended ended = BuiltProgram.Run(
            $"chmod 755 . && chmod 644 h.json && mkdir home && chown 12345 home && {made} && export -f payday && export HOME=$PWD/home XDG_DATA_HOME= && " +
            $"setpriv --reuid 12345 --regid 12345 --clear-groups bash -c 'payday {line}'", shell.In(""));

        Assert.Equal((1, ""), (ended.Exit, ended.Out));
        Assert.Contains(part.Replace("DIR", shell.In("").TrimEnd('/'), StringComparison.Ordinal), ended.Sentences.Single(), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(shell.In("home")));
    }

    [Fact]
    public void Run_WordsThatBeginWithAt_AreWords()
    {
        ImportCommand.Import(shell.Data, DemoCommand.Household());
        shell.File("home", "--accept");
        shell.Run("run", "--accept").Fine();

        Ended ended = BuiltProgram.Run("payday --data data spend Food 3 --on 2026-03-07 --what @home", shell.In(""));

        Assert.Equal(0, ended.Exit);
        Assert.Contains("@home", ended.Out, StringComparison.Ordinal);
        Assert.Equal(2, BuiltProgram.Run("payday --data data run @home", shell.In("")).Exit);
    }

    public void Dispose() => shell.Dispose();
}
