using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Screens.Bank;
using Payday.Screens.Cards;
using Payday.Screens.Counts;
using Payday.Screens.Dues;
using Payday.Screens.Entries;
using Payday.Screens.Fills;
using Payday.Screens.Leading;
using Payday.Screens.Moves;
using Payday.Screens.Watching;
using Payday.Screens.Returns;
using Payday.Screens.Reviews;
using Payday.Screens.Routines;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Screens.Statements;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Looks;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens;

/// <summary>The keys of all screens, with what the screen is called.</summary>
internal static class AllKeys
{
    // Every screen is opened for it, so it is done once.
    private static readonly Lazy<IReadOnlyList<(string Screen, Binding Binding)>> Known = new(() => [.. OfTheDemo(), .. OfAPot(), .. OfTheWeeks(), .. OfTheSetup(), .. OfTheStart(), .. OfTheLook()]);

    /// <summary>Walks them all; the library's driver is used, so tests that do this run one after the other.</summary>
    public static IReadOnlyList<(string Screen, Binding Binding)> OfAllScreens() => Known.Value;

    private static IEnumerable<(string Screen, Binding Binding)> OfTheDemo()
    {
        foreach (string name in ScreenGoldenTests.Names.Select(row => row.Data).Where(name => name is not ("help" or "leave")))
        {
            using var terminal = new DemoTerminal();
            foreach (Binding binding in terminal.Open(name).Top.Bindings)
            {
                yield return (InWords(name), binding);
            }
        }
    }

    private static string InWords(string screen) => screen switch
    {
        "papers" => "slip and sheet",
        "debts-ahead" => "debts page",
        "ledger-filter" => "ledger filter",
        _ => screen,
    };

    // Of the step only the keys of a row that asks, before its date and after it.
    private static IEnumerable<(string Screen, Binding Binding)> OfAPot()
    {
        using var demo = new DemoBook();
        Pot asks = demo.Household.Pots.Single(pot => pot.Id == new PotId("lake-week"));
        RoutineWork work = new(demo.Session, Routine.Plan(demo.Session.Book, Routine.Begun(demo.Session.Book).Value!).Value!, _ => { }, _ => { });
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
        new Hand(new FillsScreen(session)).Press("g").Type("2").Press("Right");
        var received = new Hand(new FillsScreen(session)).Press("g").Type("3");
        var count = new Hand(new CountScreen(session)).Type("100");
        count.To("Food").Press("e").Type("Lost note=5").Press("c");
        var purchases = new Hand(new PurchasesScreen(session)).Press("a").Type("Corner shop", "12.40").Pick("f").Press("Right");
        Screen undo = new Hand(new PurchasesScreen(session)).Press("u").Top;
        session.Take(Moving.Enter(session.Book, new MoveEntry(session.Today, MoveEnds.Buffer, MoveEnds.OfPot(session.Book.Household.Pots.Single(pot => pot.Name == "Reserve")), Core.Amounts.Money.FromMinorUnits(100, session.Book.Household.Currency), "")).Value!);
        session.Take(Entering.Enter(session.Book, new EntryWish(session.Today, EntryKind.Fee, MoveEnds.Buffer, Core.Amounts.Money.FromMinorUnits(-100, session.Book.Household.Currency), "fee")).Value!);
        var moves = new Hand(new MovesScreen(session));
        var entries = new Hand(new EntriesScreen(session));
        var list = new PurchaseListScreen(session);
        list.Pasted("2026-03-10, 8.20, Corner shop");
        var reconciling = new Hand(new ReconcileScreen(session)).Press("Enter").Type("1");
        using var files = new ScratchFolder();
        File.WriteAllText(files.In("march.csv"), "Date;Party;Amount\n2026-03-10;Inhaler refill;-36.80\n2026-03-12;Account fee;-4.50\n");
        IReadOnlyList<Binding> ofNoFile = new StatementScreen(session).Bindings;
        var statement = new Hand(new StatementScreen(session)).Press("Enter").Type(files.In("march.csv"));
        IReadOnlyList<Binding> ofStatement = statement.To("Account fee").Top.Bindings;
        statement.Press("@").Type("1").Press("#").Leave();
        var rules = new Hand(new RulesScreen(session)).Press("a").Type("shop");
        var taking = new Hand(statement.Top).Press("Ctrl+A", "c");
        IReadOnlyList<Binding> ofTaking = taking.Top.Bindings;
        (string Name, Screen Screen)[] screens =
        [
            ("count", new Hand(new CountScreen(session)).Type("1").Top), ("by notes", new Hand(new CountScreen(session)).Press("n").Type("1").Top),
            ("differences", new DifferencesScreen(session)), ("dues", new Hand(new DuesScreen(session)).To("Sofa card").Top), ("a due", new Hand(new DuesScreen(session)).To("Sofa card").Press("Space").Type("1").Top), ("free a due", new Hand(new DuesScreen(session)).To("Sofa card").Press("x").Top),
            ("fills", new FillsScreen(session)), ("notes received", received.Top), ("card purchases", purchases.Top),
            ("undo purchase", undo), ("card purchase", new PurchaseForm(session, null)), ("purchase list", list), ("cash return", new ReturnScreen(session)),
            ("deposit slip", new Hand(new ReturnScreen(session)).Press("c").Top), ("history", new HistoryScreen(session, session.Book.Household.Pots[0])),
            ("the bank", reconciling.Top), ("a difference", new Hand(new ReconcileScreen(session)).Press("Space", "c").Top),
            ("rules", rules.Top),
            ("moves", moves.Top), ("undo move", new Hand(new MovesScreen(session)).Press("u").Top), ("move", new MoveScreen(session)),
            ("entries", entries.Top), ("entry", new EntryScreen(session)), ("take back", new Hand(new CountScreen(session)).Press("u", "Enter").Top),
        ];
        return
        [
            .. screens.SelectMany(screen => screen.Screen.Bindings.Select(binding => (screen.Name, binding))),
            .. ofNoFile.Select(binding => ("statement file", binding)),
            .. ofStatement.Select(binding => ("statements", binding)),
            .. ofTaking.Select(binding => ("take statement", binding)),
        ];
    }

    private static IEnumerable<(string Screen, Binding Binding)> OfTheSetup()
    {
        using var demo = new DemoBook();
        foreach (Binding binding in ((Way.To)new ScreenMap().Lead(new Goal.Household(demo.Session))).Screen.Bindings.Where(key => key.Name == "i"))
        {
            yield return ("household", binding);
        }

        demo.Hand.To("Bills");
        foreach (string name in (string[])["household", "a list", "a form"])
        {
            foreach (Binding binding in demo.Hand.Top.Bindings)
            {
                yield return (name, binding);
            }

            demo.Hand.Press("Enter");
        }

        Hand lines = new Hand(new SetupScreen(new BookWork(demo.Session))).To("Bills").Press("Enter", "i");
        Binding[] none = [.. lines.Top.Bindings];
        lines.Press("Enter").Type("Choir 9 1st", "");
        foreach (Binding binding in none.Concat(lines.Top.Bindings).DistinctBy(key => (key.Name, key.Help)))
        {
            yield return ("lines", binding);
        }
    }

    private static IEnumerable<(string Screen, Binding Binding)> OfTheStart()
    {
        using var folder = new ScratchFolder();
        using BookStore store = BookStore.Open(new StoreFolder(folder.Path));
        var start = new StartScreen(new StartDoor(store, () => new(2026, 3, 2), _ => new HouseholdOffer(null, []), _ => throw new InvalidOperationException("No demo here.")));
        string bank = Directory.CreateDirectory(folder.In("bank")).FullName;
        foreach ((string name, string text) in HalfYearExport.Before(new DateOnly(2026, 3, 2)))
        {
            File.WriteAllText(Path.Combine(bank, name), text);
        }

        var guide = new Hand(start).Press("Enter");
        var files = new Hand(start).To("Begin from bank").Press("Enter");
        Binding[] noFile = [.. files.Top.Bindings];
        files.Press("Enter").Type(bank, "");
        Binding[] read = [.. files.Top.Bindings];
        var found = files.Press("Right");
        return
        [
            .. start.Bindings.Select(binding => ("first start", binding)),
            .. guide.Top.Bindings.Select(binding => ("setting up", binding)),
            .. noFile.Concat(read).Select(binding => ("bank statements", binding)),
            .. found.To("Harbour").Top.Bindings.Concat(found.To("Northlane").Press("Enter").To("Northlane").Top.Bindings).Select(binding => ("found in statements", binding)),
        ];
    }

    // Of a look only the keys that are its own: the others are those of the same screens.
    private static IEnumerable<(string Screen, Binding Binding)> OfTheLook()
    {
        using var demo = new DemoBook();
        var looking = new BookWatch(new OneLook(() => demo.Session.Book) { Holder = null }, new Seen(demo.Session.Book, FolderHolder.Unknown), () => demo.Session.Today);
        Screen home = ScreenMap.Home(looking);
        return
        [
            .. home.Bindings.Where(key => key.Label is "read again" or "help").Select(key => ("home, only looking", key)),
            .. new Hand(home).Press("Ctrl+R").Top.Bindings.Where(key => key.Label.Length > 0).Select(key => ("open it for changes", key)),
        ];
    }
}
