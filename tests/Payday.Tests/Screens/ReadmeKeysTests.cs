using System.Text;
using Payday.Screens.Shell;
using Payday.Tests.House;

namespace Payday.Tests.Screens;

/// <summary>The README's keys are made from the bindings of the screens, as the bottom lines and the help pages are.</summary>
[Collection(OneTerminal.Name)]
public class ReadmeKeysTests
{
    private const string Begin = "<!-- keys: made by the tests from the bindings -->\n";
    private const string End = "<!-- end of keys -->\n";

    private static readonly string[] Steps = ["income", "bills", "debts", "pots", "surplus", "withdrawal", "slip"];

    [Fact]
    public void Readme_Keys_AreThoseOfTheScreens()
    {
        string path = Path.Combine(Repository.Root, "README.md");
        string readme = File.ReadAllText(path);
        int from = readme.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = readme.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= Begin.Length && to >= from, "The README has no place for the keys.");
        string table = Table();
        if (Environment.GetEnvironmentVariable("PAYDAY_WRITE_GOLDENS") is { Length: > 0 })
        {
            File.WriteAllText(path, readme[..from] + table + readme[to..]);
            Assert.Fail("The README's keys were written; look at them, then run again without PAYDAY_WRITE_GOLDENS.");
        }

        Assert.Equal(table, readme[from..to]);
    }

    private static string Table()
    {
        IReadOnlyList<(string Screen, Binding Binding)> all = AllKeys.OfAllScreens();
        int screens = all.Select(key => key.Screen).Distinct().Count();
        var table = new StringBuilder("| key | does | on |\n| --- | --- | --- |\n");
        foreach (var keys in all
            .GroupBy(key => (key.Binding.Name, key.Binding.Help), key => key.Screen)
            .OrderByDescending(keys => keys.Distinct().Count()))
        {
            string[] on = [.. keys.Distinct()];
            string where = on.Length == screens ? "every screen" : on.Length > screens / 2 ? "most screens" : Listed(on);
            table.Append($"| `{keys.Key.Name}` | {keys.Key.Help} | {where} |\n");
        }

        return table.Append($"| `{ShellKeys.Leave.Name}` | {ShellKeys.Leave.Help} | every screen |\n").ToString();
    }

    private static string Listed(string[] on) => Steps.All(on.Contains)
        ? string.Join(", ", on.Except(Steps).Prepend("the routine"))
        : string.Join(", ", on);
}
