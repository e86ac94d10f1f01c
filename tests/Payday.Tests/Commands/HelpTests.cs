using System.CommandLine;
using System.CommandLine.Parsing;
using NodaTime;
using Payday.Commands;
using Payday.Store.Folders;
using Payday.Text;

namespace Payday.Tests.Commands;

public class HelpTests
{
    private static readonly CommandShell NoShell = new(
        TextWriter.Null, TextWriter.Null, TextReader.Null, () => new LocalDate(2026, 3, 6), () => new StoreFolder("nowhere"));

    public static TheoryData<string> Names => [.. CommandTree.Build(NoShell).Subcommands.Select(command => command.Name).Prepend("")];

    [Theory]
    [MemberData(nameof(Names))]
    public void Help_OfACommand_DescribesItInEightyColumnsWithAnExample(string name)
    {
        using var shell = new TestShell();

        Ran ran = shell.Run([.. name.Length == 0 ? Array.Empty<string>() : [name], "--help"]).Fine();

        Assert.Equal("Description:", ran.Lines[0]);
        Assert.Equal("Example:", ran.Lines[^2]);
        Assert.Contains("payday", ran.Lines[^1], StringComparison.Ordinal);
        Assert.All(ran.Lines, line => Assert.InRange(TextColumns.Width(line), 0, 80));
        Assert.All(ran.Lines, line => Assert.Equal(line.TrimEnd(), line));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Example_OfACommand_ParsesAsThatCommand(string name)
    {
        RootCommand root = CommandTree.Build(NoShell);
        Command command = name.Length == 0 ? root : root.Subcommands.Single(sub => sub.Name == name);
        string example = Assert.IsAssignableFrom<IExample>(command).Example;

        // What the shell does with the line is no part of it.
        string line = example[example.IndexOf("payday", StringComparison.Ordinal)..].Split(" > ")[0].TrimEnd(')');
        ParseResult parsed = root.Parse([.. CommandLineParser.SplitCommandLine(line).Skip(1)]);

        Assert.Empty(parsed.Errors);
        Assert.Equal(name.Length == 0 ? "demo" : name, parsed.CommandResult.Command.Name);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Description_OfEverything_IsASentence(string name)
    {
        RootCommand root = CommandTree.Build(NoShell);
        Command command = name.Length == 0 ? root : root.Subcommands.Single(sub => sub.Name == name);

        IEnumerable<Symbol> own = [command, .. command.Arguments, .. command.Options.Where(option => option.Name is not ("--help" or "--version"))];

        Assert.All(own, symbol => Assert.EndsWith(".", symbol.Description, StringComparison.Ordinal));
    }

    [Fact]
    public void Suggest_AfterShow_OffersItsParts()
    {
        using var shell = new TestShell();

        Ran ran = shell.Run("[suggest:12]", "payday show ").Fine();

        string[] parts = ["bills", "calendar", "debts", "ledger", "months", "pots", "year"];
        Assert.Equal(parts, ran.Lines.Where(line => line[0] is not '-'));
    }

    [Theory]
    [InlineData("bash", "complete -o default -F _payday payday")]
    [InlineData("zsh", "compdef _payday payday")]
    [InlineData("fish", "complete -c payday -a '(payday \"[suggest:\"(commandline -C)\"]\" (commandline -cp) 2>/dev/null)'")]
    public void Completion_OfAShell_EndsByRegistering(string name, string last)
    {
        using var shell = new TestShell();

        Assert.Equal(last, shell.Run("completion", name).Fine().Lines[^1]);
    }
}
