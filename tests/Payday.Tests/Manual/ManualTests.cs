using System.CommandLine;
using NodaTime;
using Payday.Commands;
using Payday.Core.Faults;
using Payday.Manual;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;
using Payday.Tests.Commands;
using Payday.Tests.House;

namespace Payday.Tests.Manual;

/// <summary>The pages of the manual name all that there is, and are what man takes.</summary>
public class ManualTests
{
    private static readonly CommandShell NoShell = new(
        TextWriter.Null, TextWriter.Null, TextReader.Null, () => new LocalDate(2026, 3, 6), () => new StoreFolder("nowhere"));

    private static readonly string[] Commands = [.. CommandPage.Lines(CommandTree.Build(NoShell), ProgramVersion.OfProgram(), command => (command as IExample)?.Example)];

    private static readonly string[] Household = [.. HouseholdPage.Lines(ProgramVersion.OfProgram())];

    [Fact]
    public void CommandPage_OfTheProgram_NamesEachCommandOptionAndArgument()
    {
        string page = Plain(Commands);

        Assert.All(All(CommandTree.Build(NoShell), ""), one =>
        {
            Assert.Contains($".SS \"payday {one.Path}\"", page, StringComparison.Ordinal);
            string section = page[page.IndexOf($".SS \"payday {one.Path}\"", StringComparison.Ordinal)..];
            section = section[..(section.IndexOf("\n.S", 3, StringComparison.Ordinal) is > 0 and var end ? end : section.Length)];
            Assert.All(one.Command.Options.Where(option => !option.Hidden), option => Assert.Contains($".TP\n{option.Name}", section, StringComparison.Ordinal));
            Assert.All(one.Command.Arguments, argument => Assert.Contains($".TP\n{argument.HelpName ?? argument.Name}\n{argument.Description}", section, StringComparison.Ordinal));
            Assert.Contains(one.Command.Description!, section, StringComparison.Ordinal);
        });
        Assert.All(CommandTree.Build(NoShell).Options, option => Assert.Contains($".TP\n{option.Name}", page, StringComparison.Ordinal));
    }

    [Fact]
    public void HouseholdPage_OfTheFile_NamesEachField()
    {
        string page = Plain(Household);

        Assert.All(HouseholdFormat.Fields.AllNames.Append("version").Distinct(), name => Assert.Matches($@"\b{name}\b", page));
    }

    [Fact]
    public void HouseholdPage_Example_IsTaken()
    {
        Assert.Equal([], HouseholdFile.Read(HouseholdPage.Example).Faults);
        Assert.Contains(HouseholdPage.Example, Plain(Household), StringComparison.Ordinal);
    }

    [Fact]
    public void Readme_Fields_AreThoseOfTheProgram()
    {
        const string begin = "<!-- fields: made by the tests from the table of the program -->\n";
        string path = Path.Combine(Repository.Root, "README.md");
        string readme = File.ReadAllText(path);
        int from = readme.IndexOf(begin, StringComparison.Ordinal) + begin.Length;
        int to = readme.IndexOf("<!-- end of fields -->\n", StringComparison.Ordinal);
        Assert.True(from >= begin.Length && to >= from, "The README has no place for the fields.");
        string table = "| field | holds |\n| --- | --- |\n" + string.Concat(HouseholdFields.All.Select(field => $"| {field.Names} | {field.Holds} |\n"));
        if (Environment.GetEnvironmentVariable("PAYDAY_WRITE_GOLDENS") is { Length: > 0 } && table != readme[from..to])
        {
            File.WriteAllText(path, readme[..from] + table + readme[to..]);
            Assert.Fail("The README's fields were written; look at them, then run again without PAYDAY_WRITE_GOLDENS.");
        }

        Assert.Equal(table, readme[from..to]);
    }

    [Fact]
    public void Pages_AllLines_AreRequestsOfManOrText()
    {
        string[] known = [".TH", ".nh", ".ad", ".SH", ".SS", ".TP", ".PP", ".RS", ".RE", ".nf", ".fi", ".BR"];

        Assert.All(Commands.Concat(Household).Where(line => line.StartsWith('.')), line => Assert.Contains(line.Split(' ')[0], known));

        // A quote at the beginning of a line is a request too; anything but ASCII is an escape; an empty line prints one.
        Assert.All(Commands.Concat(Household), line => Assert.Matches(@"^[ -&(-~][ -~]*$", line));
    }

    [Theory]
    [InlineData(".5 \\ 'a' -x", "\\&.5 \\e \\(aqa\\(aq \\-x")]
    [InlineData("`--on` ~é", "\\fB\\-\\-on\\fP \\(ti\\[u00E9]")]
    public void Text_OfSignsWithAMeaning_PrintsThem(string text, string roff) => Assert.Equal(roff, Roff.Text(text));

    [Fact]
    public void Manual_OfThisVersion_SaysIt()
    {
        using var shell = new TestShell();

        string[] first = [shell.Run("manual").Fine().Lines[0], shell.Run("manual", "payday-household").Fine().Lines[0]];

        Assert.Matches(@"^\.TH PAYDAY 1 \d{4}-\d\d-\d\d ""Payday \d+\.\d+\.\d+"" ""User Commands""$", first[0]);
        Assert.Matches(@"^\.TH PAYDAY\\-HOUSEHOLD 5 \d{4}-\d\d-\d\d ""Payday \d+\.\d+\.\d+"" ""File Formats""$", first[1]);
        Assert.Contains(shell.Run("--version").Fine().Out.Split('+')[0].Trim(), first[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("")]
    public void Help_OfACommand_IsWhatTheOptionSays(string name)
    {
        using var shell = new TestShell();
        string[] words = name.Length == 0 ? [] : [name];

        Assert.Equal(shell.Run([.. words, "--help"]).Fine(), shell.Run(["help", .. words]).Fine());
    }

    private static IEnumerable<(string Path, Command Command)> All(Command above, string path) => above.Subcommands
        .SelectMany(command => All(command, $"{path}{command.Name} ").Prepend((path + command.Name, command)));

    // As a reader of the page sees it, but for the requests.
    private static string Plain(string[] lines) => string.Join('\n', lines)
        .Replace("\\fB", "", StringComparison.Ordinal).Replace("\\fI", "", StringComparison.Ordinal).Replace("\\fP", "", StringComparison.Ordinal)
        .Replace("\\&", "", StringComparison.Ordinal).Replace("\\-", "-", StringComparison.Ordinal)
        .Replace("\\(aq", "'", StringComparison.Ordinal).Replace("\\(dq", "\"", StringComparison.Ordinal)
        .Replace("\\(ti", "~", StringComparison.Ordinal).Replace("\\(ha", "^", StringComparison.Ordinal).Replace("\\e", "\\", StringComparison.Ordinal);
}
