using System.Text;
using NodaTime;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Screens.Looking;
using Payday.Screens.Routines;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Screens.Weeks;
using Payday.Store;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Looks;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

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
        string path = Path.Combine(Root(), "README.md");
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
        List<(string Screen, Binding Binding)> all = [.. OfTheDemo(), .. OfAPot(), .. OfTheWeeks(), .. OfTheSetup(), .. OfTheStart(), .. OfTheLook()];
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

    private static IEnumerable<(string Screen, Binding Binding)> OfTheDemo()
    {
        foreach (string name in ScreenGoldenTests.Names.Select(row => row.Data).Where(name => name is not ("help" or "leave")))
        {
            using var terminal = new DemoTerminal();
            foreach (Binding binding in terminal.Open(name).Top.Bindings)
            {
                yield return (name, binding);
            }
        }
    }

    // Of the step only the keys of a row that asks, before its date and after it.
    private static IEnumerable<(string Screen, Binding Binding)> OfAPot()
    {
        using var demo = new DemoBook();
        Pot asks = demo.Household.Pots.Single(pot => pot.Id == "lake-week");
        RoutineWork work = new(demo.Session, Routine.Plan(demo.Session.Book, Routine.Begun(demo.Session.Book).Value!).Value!, _ => { });
        PotRow row = work.Plan.Pots.Rows.Single(row => row.Pot == asks);
        return
        [
            .. ((LocalDate[])[work.Plan.Period.First, demo.Household.Start])
                .SelectMany(by => PotAnswerKeys.Of(row with { Sinking = new SinkingState(SinkingStage.Bought, by, row.HasNow) }, work))
                .Select(key => ("pots", key)),
        ];
    }

    private static IEnumerable<(string Screen, Binding Binding)> OfTheWeeks()
    {
        using var demo = new DemoBook(new LocalDate(2026, 3, 13));
        demo.CloseOne();
        BookSession session = demo.Session;
        var count = new Hand(new CountScreen(session)).Type("100");
        count.To("Food").Press("d").Type("Lost note=5").Press("c");
        var purchases = new Hand(new PurchasesScreen(session)).Press("a").Type("Corner shop", "12.40").Pick("f").Press("Right");
        Screen undo = new Hand(new PurchasesScreen(session)).Press("u").Top;
        var list = new PurchaseListScreen(session);
        list.Pasted("2026-03-10, 8.20, Corner shop");
        (string Name, Screen Screen)[] screens =
        [
            ("count", new Hand(new CountScreen(session)).Type("1").Top), ("by notes", new Hand(new CountScreen(session)).Press("n").Type("1").Top),
            ("differences", new DifferencesScreen(session)), ("fills", new FillsScreen(session)), ("card purchases", purchases.Top),
            ("undo purchase", undo), ("card purchase", new PurchaseForm(session, null)), ("purchase list", list), ("cash return", new ReturnScreen(session)),
            ("deposit slip", new Hand(new ReturnScreen(session)).Press("c").Top), ("history", new HistoryScreen(session, session.Book.Household.Pots[0])),
            ("take back", new Hand(new CountScreen(session)).Press("u", "Enter").Top),
        ];
        return [.. screens.SelectMany(screen => screen.Screen.Bindings.Select(binding => (screen.Name, binding)))];
    }

    private static IEnumerable<(string Screen, Binding Binding)> OfTheSetup()
    {
        using var demo = new DemoBook();
        demo.Hand.To("Bills");
        foreach (string name in (string[])["household", "a list", "a form"])
        {
            foreach (Binding binding in demo.Hand.Top.Bindings)
            {
                yield return (name, binding);
            }

            demo.Hand.Press("Enter");
        }
    }

    private static IEnumerable<(string Screen, Binding Binding)> OfTheStart()
    {
        using var folder = new ScratchFolder();
        using BookStore store = BookStore.Open(new StoreFolder(folder.Path));
        var start = new StartScreen(new StartDoor(store, () => new(2026, 3, 2), _ => new HouseholdOffer(null, []), _ => throw new InvalidOperationException("No demo here.")));
        return [.. start.Bindings.Select(binding => ("first start", binding))];
    }

    // Of a look only the keys that are its own: the others are those of the same screens.
    private static IEnumerable<(string Screen, Binding Binding)> OfTheLook()
    {
        using var demo = new DemoBook();
        var looking = new Looking(new OneLook(() => demo.Session.Book) { Holder = null }, new Seen(demo.Session.Book, FolderHolder.Unknown), () => demo.Session.Today);
        Screen home = looking.Home();
        return
        [
            .. home.Bindings.Where(key => key.Label is "read again" or "help").Select(key => ("home, only looking", key)),
            .. new Hand(home).Press("a").Top.Bindings.Where(key => key.Label.Length > 0).Select(key => ("open it for changes", key)),
        ];
    }

    private static string Root()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Payday.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The tests don't run inside the project.");
    }
}
