using Payday.Tests.Sentences;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Printing;

namespace Payday.Tests.Printing;

public sealed class LinePrinterTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    [Fact]
    public void Print_Lines_ReachTheCommandAsUtf8()
    {
        LinePrinter printer = Command("cat > \"$0.in\"; printf '%s\\n' \"$#\" \"$@\" > \"$0.args\"; echo 'request id is home-1 (0 file(s))'");
        Assert.Equal("request id is home-1 (0 file(s))", printer.Print(["Café 買い物", "2"], null, ascii: false).Value);
        Assert.Equal("Café 買い物\n2\n"u8.ToArray(), File.ReadAllBytes(folder.In("lp.in")));
        Assert.Equal("0\n", File.ReadAllText(folder.In("lp.args")).Replace("\n\n", "\n", StringComparison.Ordinal));
    }

    [Fact]
    public void Print_AFile_ReachesTheCommandAsItIs()
    {
        byte[] pdf = [.. "%PDF-1.7\n"u8, 0, 255, 13, 10, 128];
        Assert.True(Command("cat > \"$0.in\"; printf '%s\\n' \"$@\" > \"$0.args\"").Print(pdf, "desk").Ok);
        Assert.Equal(pdf, File.ReadAllBytes(folder.In("lp.in")));
        Assert.Equal("-d\ndesk\n", File.ReadAllText(folder.In("lp.args")));
    }

    [Fact]
    public void Print_Ascii_FoldsTheLetters()
    {
        Assert.True(Command("cat > \"$0.in\"").Print(["Café 買い物"], null, ascii: true).Ok);
        Assert.Equal("Cafe ??????\n", File.ReadAllText(folder.In("lp.in")));
    }

    [Fact]
    public void Print_PrinterNameWithShellCharacters_IsOneArgument()
    {
        LinePrinter printer = Command("cat > /dev/null; printf '%s\\n' \"$@\" > \"$0.args\"");
        Assert.True(printer.Print(["x"], "desk; touch 'y' $(z)", ascii: false).Ok);
        Assert.Equal("-d\ndesk; touch 'y' $(z)\n", File.ReadAllText(folder.In("lp.args")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("-o raw")]
    [InlineData("a\nb")]
    [InlineData("a\u001bb")]
    [InlineData("a\0b")]
    public void Print_UnusablePrinterName_RunsNothing(string name)
    {
        Result<string> printed = Command("touch \"$0.ran\"").Print(["x"], name, ascii: false);
        Assert.Equal("A printer's name can't be empty, begin with '-' or hold control characters; give its plain name.", printed.Fault.Said());
        Assert.False(File.Exists(folder.In("lp.ran")));
    }

    [Fact]
    public void Print_CommandFails_GivesItsReasonCleaned()
    {
        LinePrinter printer = Command("cat > /dev/null; printf 'lp: no \\033[31mdestination\\nmore\\n' >&2; exit 1");
        Assert.Equal("The printer refused: lp: no ?[31mdestination", printer.Print(["x"], "none", ascii: false).Fault.Said());
    }

    [Fact]
    public void Print_CommandFailsSilently_SaysSo() =>
        Assert.Equal("The command 'lp' failed without a reason; look at the printer.", Command("exit 3").Print(["x"], null, ascii: false).Fault.Said());

    [Fact]
    public void Print_CommandReadsNothing_DoesNotHang()
    {
        string[] lines = [.. Enumerable.Repeat(new string('x', 80), 20_000)];
        Assert.Equal("The printer refused: busy", Command("echo busy >&2; exit 1").Print([.. lines], null, ascii: false).Fault.Said());
    }

    [Fact]
    public void Print_NoCommand_SaysWhatElse()
    {
        const string Missing = "Printing needs the command 'lp', which is not on this machine; write a PDF instead.";
        Assert.Equal(Missing, new LinePrinter(folder.Path).Print(["x"], null, ascii: false).Fault.Said());
        Assert.Equal(Missing, new LinePrinter(null).Print(["x"], null, ascii: false).Fault.Said());
        Assert.Equal(Missing, new LinePrinter(".:relative:").Print(["x"], null, ascii: false).Fault.Said());
    }

    [Fact]
    public void Print_CommandThatCannotRun_SaysSo()
    {
        File.WriteAllText(folder.In("lp"), "not a program");
        Assert.Equal("The command 'lp' can't be run; write a PDF instead.", new LinePrinter(folder.Path).Print(["x"], null, ascii: false).Fault.Said());
    }

    [Theory]
    [InlineData("exit 0", "request id is home-1 (0 file(s))", null)]
    [InlineData("echo busy >&2; exit 1", null, "The printer refused: busy")]
    public async Task Print_CommandLeavesAProcessBehind_IsToldAsItEnded(string ends, string? said, string? fault)
    {
        // As a spooler that lp starts: it has lp's own ends of the pipes, and keeps them open.
        LinePrinter printer = Command($"cat > \"$0.in\"; sleep 600 & echo $! > \"$0.pid\"; echo 'request id is home-1 (0 file(s))'; {ends}");
        try
        {
            CancellationToken stop = TestContext.Current.CancellationToken;
            Result<string> printed = await Task.Run(() => printer.Print(["x"], null, ascii: false), stop).WaitAsync(TimeSpan.FromSeconds(25), stop);
            Assert.Equal((said is not null, fault), (printed.Ok, printed.Ok ? null : (string?)printed.Fault.Said()));
            Assert.Equal(said ?? "", printed.Ok ? printed.Value : "");
            Assert.Equal("x\n", File.ReadAllText(folder.In("lp.in")));
        }
        finally
        {
            using var left = System.Diagnostics.Process.GetProcessById(int.Parse(File.ReadAllText(folder.In("lp.pid")), System.Globalization.CultureInfo.InvariantCulture));
            left.Kill();
        }
    }

    public void Dispose() => folder.Dispose();

    private LinePrinter Command(string script)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "The stand-in command is a shell script.");
        string path = folder.In("lp");
        File.WriteAllText(path, $"#!/bin/sh\n{script}\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        return new LinePrinter(folder.Path);
    }
}
