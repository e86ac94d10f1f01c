using System.Diagnostics;
using Payday.Tests.Commands;
using Payday.Tests.House;

namespace Payday.Tests.Processes;

/// <summary>The reminder by mail as the package brings it: its script with a <c>sendmail</c> that keeps the letter, and its units.</summary>
public sealed class ReminderTests : IDisposable
{
    private static readonly string Folder = Path.Combine(Repository.Root, "src", "Payday", "Publish", "reminder");

    private readonly TestShell shell = new();

    public ReminderTests()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The reminder is for Linux.");
        Directory.CreateDirectory(shell.In("bin"));
        Executable("sendmail", $"#!/bin/sh\nprintf '%s ' \"$@\" >'{shell.In("arguments")}'\ncat >'{shell.In("letter")}'\n");
        Executable("payday", $"#!/bin/sh\nexec {BuiltProgram.Command()} \"$@\"\n");
    }

    [Fact]
    public void Remind_WhereAPaydayIsDue_MailsTheStatus()
    {
        shell.Run("import", Path.Combine(Repository.Root, "demo", "household.json")).Fine();

        Ended ended = Remind("robin@example.org", "--data", shell.Data.Path);

        Assert.Equal((0, "", ""), (ended.Exit, ended.Out, ended.Error));
        Assert.Equal("-i -t ", File.ReadAllText(shell.In("arguments")));
        string[] letter = File.ReadAllLines(shell.In("letter"));
        Assert.Equal(
            ["To: robin@example.org", "Subject: Payday: something waits", "MIME-Version: 1.0", "Content-Type: text/plain; charset=utf-8", "Content-Transfer-Encoding: 8bit", ""],
            letter[..6]);
        Assert.StartsWith("payday Fri 6 Mar is due", Assert.Single(letter[6..]), StringComparison.Ordinal);
    }

    [Fact]
    public void Remind_WhereThereIsNoHousehold_SaysThatItCantBeRead()
    {
        Remind("robin", "--data", shell.In("none"));

        string letter = File.ReadAllText(shell.In("letter"));
        Assert.Contains("Subject: Payday: the household can't be read\n", letter, StringComparison.Ordinal);
        Assert.Contains("There is no household in", letter, StringComparison.Ordinal);
    }

    [Fact]
    public void Remind_WhereNothingWaits_MailsNothing()
    {
        Executable("payday", "#!/bin/sh\necho nothing\nexit 0\n");

        Assert.Equal((0, "", ""), Remind() is var ended ? (ended.Exit, ended.Out, ended.Error) : default);
        Assert.False(File.Exists(shell.In("letter")));
    }

    [Fact]
    public void Remind_CalledWrongly_SaysSoToWhoRunsIt()
    {
        Remind("robin", "--nonsense");

        Assert.Contains("Subject: Payday: the reminder is not set up right\n", File.ReadAllText(shell.In("letter")), StringComparison.Ordinal);
    }

    [Fact]
    public void Remind_WithoutAnAddress_MailsToWhoRunsIt()
    {
        Remind();

        Assert.StartsWith($"To: {Environment.UserName}\n", File.ReadAllText(shell.In("letter")), StringComparison.Ordinal);
    }

    // With the script in its place, as the package puts it there.
    [Fact]
    public void Units_AreTakenBySystemd()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/systemd-analyze"), "systemd-analyze is missing.");
        string[] units = ["payday-reminder.service", "payday-reminder.timer"];
        foreach (string unit in units)
        {
            File.WriteAllText(shell.In(unit), File.ReadAllText(Path.Combine(Folder, unit)).Replace("ExecStart=/usr/libexec/payday/remind\n", $"ExecStart={Path.Combine(Folder, "remind")}\n", StringComparison.Ordinal));
        }

        var start = new ProcessStartInfo("/usr/bin/systemd-analyze", ["--user", "--man=no", "verify", .. units.Select(shell.In)]) { RedirectStandardError = true, RedirectStandardOutput = true };
        start.Environment["XDG_RUNTIME_DIR"] = shell.In("bin");
        using Process process = Process.Start(start)!;
        string said = process.StandardError.ReadToEnd() + process.StandardOutput.ReadToEnd();
        process.WaitForExit();

        Assert.Equal((0, ""), (process.ExitCode, string.Join('\n', said.Split('\n').Where(line => line.Contains("payday", StringComparison.Ordinal)))));
    }

    public void Dispose() => shell.Dispose();

    private Ended Remind(params string[] words) => BuiltProgram.Run(
        $"PATH='{shell.In("bin")}':$PATH '{Path.Combine(Folder, "remind")}' {string.Join(' ', words.Select(word => $"'{word}'"))}", shell.In("bin"), ("HOME", shell.In("bin")), ("XDG_DATA_HOME", null));

    private void Executable(string name, string text)
    {
        string path = Path.Combine(shell.In("bin"), name);
        File.WriteAllText(path, text);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }
}
