using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text;
using NodaTime;
using Payday.Commands;
using Payday.Screens.Shell;
using Payday.Store.Folders;
using Payday.Tests.House;
using Payday.Tests.Screens;

namespace Payday.Tests.Commands;

/// <summary>The README's table of decisions and their commands is made from the bindings of the screens: none is without one.</summary>
[Collection(OneTerminal.Name)]
public class ReadmeCommandsTests
{
    private const string Begin = "<!-- commands: made by the tests from the bindings -->\n";
    private const string End = "<!-- end of commands -->\n";

    [Fact]
    public void Keys_OfAllScreens_HaveACommandOrDecideNothing()
    {
        HashSet<(string, string)> there = [.. AllKeys.OfAllScreens().Select(key => (key.Screen, key.Binding.Name))];
        HashSet<(string, string)> known = [.. KeyCommands.All.Select(row => (row.Screen, row.Key)), .. KeyCommands.Others];

        Assert.Equal([], there.Where(key => !KeyCommands.Moving.Contains(key.Item2) && !known.Contains(key)));
        Assert.Equal([], known.Where(key => !there.Contains(key)));
        Assert.Distinct(KeyCommands.All.Select(row => (row.Screen, row.Key)));
    }

    [Fact]
    public void Commands_OfTheTable_AreCalledRight()
    {
        var shell = new CommandShell(TextWriter.Null, TextWriter.Null, TextReader.Null, () => new LocalDate(2026, 3, 6), () => new StoreFolder("nowhere"));
        RootCommand root = CommandTree.Build(shell);

        Assert.All(KeyCommands.All, row => Assert.Empty(root.Parse([.. CommandLineParser.SplitCommandLine(row.Line).Skip(1)]).Errors));
    }

    [Fact]
    public void Readme_Commands_AreThoseOfTheTable()
    {
        string path = Path.Combine(Repository.Root, "README.md");
        string readme = File.ReadAllText(path);
        int from = readme.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = readme.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= Begin.Length && to >= from, "The README has no place for the commands.");
        string table = Table();
        if (Environment.GetEnvironmentVariable("PAYDAY_WRITE_GOLDENS") is { Length: > 0 })
        {
            File.WriteAllText(path, readme[..from] + table + readme[to..]);
            Assert.Fail("The README's commands were written; look at them, then run again without PAYDAY_WRITE_GOLDENS.");
        }

        Assert.Equal(table, readme[from..to]);
    }

    private static string Table()
    {
        ILookup<(string, string), Binding> bindings = AllKeys.OfAllScreens().ToLookup(key => (key.Screen, key.Binding.Name), key => key.Binding);
        var table = new StringBuilder("| on | key | does | command |\n| --- | --- | --- | --- |\n");
        foreach ((string screen, string key, string line) in KeyCommands.All)
        {
            table.Append($"| {screen} | `{key}` | {bindings[(screen, key)].First().Help} | `{line.Replace("|", "\\|", StringComparison.Ordinal)}` |\n");
        }

        return table.ToString();
    }
}
