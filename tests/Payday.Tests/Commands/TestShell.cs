using NodaTime;
using Payday.Commands;
using Payday.Store.Folders;
using Payday.Tests.Printing;

namespace Payday.Tests.Commands;

/// <summary>Runs command lines in this process, on a data folder of their own and on one day.</summary>
internal sealed class TestShell : IDisposable
{
    private readonly ScratchFolder scratch = new();

    public LocalDate Today { get; set; } = new(2026, 3, 6);

    public StoreFolder Data => new(scratch.In("data")) { Clock = new TenOClock(() => Today) };

    /// <summary>A shell whose data folder holds the demo household.</summary>
    public static TestShell WithDemo()
    {
        var shell = new TestShell();
        ImportCommand.Import(shell.Data, DemoCommand.Household());
        return shell;
    }

    public Ran Run(params string[] args) => RunOn("", args);

    /// <summary>Skips a test that records lines with paths in them, where the path of a backup alone is longer than a line.</summary>
    public void NeedsShortPath() => Assert.SkipWhen(scratch.Path.Length > 28, "The folder for temporary files has too long a path.");

    /// <summary>Runs a command line with a text on its standard input.</summary>
    public Ran RunOn(string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var reader = new StringReader(input);
        int exit = CommandLine.Run(args, new CommandShell(output, error, reader, () => Today, () => Data));
        return new Ran(exit, output.ToString(), error.ToString());
    }

    public string In(string name) => scratch.In(name);

    /// <summary>Writes a file into the folder.</summary>
    public string File(string name, string text)
    {
        System.IO.File.WriteAllText(In(name), text);
        return In(name);
    }

    public void Dispose() => scratch.Dispose();

    // Ten in the morning of that day, everywhere.
    private sealed class TenOClock(Func<LocalDate> today) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(today().ToDateTimeUnspecified().AddHours(10), TimeSpan.Zero);
    }
}
