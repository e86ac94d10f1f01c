using NodaTime;
using Payday.Commands;
using Payday.Core.Households;
using Payday.Screens.Home;
using Payday.Screens.Leading;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Printing;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace Payday.Tests.Screens;

/// <summary>The demo household's screens on the library's own driver, without a terminal.</summary>
internal sealed class DemoTerminal : IDisposable
{
    private readonly ScratchFolder folder = new();
    private readonly BookStore store;
    private readonly IApplication app;
    private readonly SessionToken token;
    private readonly ShellView view;

    // A test run at a terminal must not take that terminal.
    static DemoTerminal() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");

    public DemoTerminal(int width = 80, int height = 24, bool ascii = false, Func<BookSession, Screen>? first = null, Func<string>? standing = null)
    {
        store = BookStore.Open(new StoreFolder(folder.Path));
        Household household = DemoCommand.Household();
        Session = NewBook.Store(store, household, () => household.Start);
        app = Application.Create(new VirtualTimeProvider());
        app.Init("ansi");
        Resize(width, height);
        view = new ShellView(first?.Invoke(Session) ?? new HomeScreen(Session), new ScreenMap().Lead, new Look(ascii ? TerminalSigns.Ascii : TerminalSigns.All), standing);
        token = app.Begin(view)!;
        app.LayoutAndDraw();
    }

    public BookSession Session { get; }

    public Screen Top => view.Top;

    public IReadOnlyList<string> Lines => app.Driver!.ToString()!.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');

    /// <summary>What a terminal would be sent to show all of it, attributes and all.</summary>
    public string Ansi => app.Driver!.ToAnsi();

    /// <summary>The cells that the library holds.</summary>
    public Terminal.Gui.Drawing.Cell[,] Held => app.Driver!.Contents!;

    public string BottomLine => Lines[^1].TrimEnd();

    /// <summary>The line in which something is typed.</summary>
    public string TypedLine => Lines[view.SubViews.OfType<CellField>().Single().Frame.Y].TrimEnd();

    public DemoTerminal Press(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            app.InjectKey(key);
            app.LayoutAndDraw();
        }

        return this;
    }

    public DemoTerminal Type(string text) => Press([.. text.Select(character => new Key(character))]);

    public DemoTerminal Paste(string text)
    {
        app.RaisePasteEvent(text);
        app.LayoutAndDraw();
        return this;
    }

    public DemoTerminal Resize(int width, int height)
    {
        app.Driver!.SetScreenSize(width, height);
        if (view is not null)
        {
            app.LayoutAndDraw();
        }

        return this;
    }

    /// <summary>To a screen of the demo by its name.</summary>
    public DemoTerminal Open(string name) => Press(Way(name));

    public static Key[] Way(string name) => name switch
    {
        "home" => [],
        "income" => [Key.Enter],
        "bills" => [Key.Enter, .. Steps(1)],
        "debts" => [Key.Enter, .. Steps(2)],
        "pots" => [Key.Enter, .. Steps(3)],
        "surplus" => [Key.Enter, .. Steps(4)],
        "withdrawal" => [Key.Enter, .. Steps(5)],
        "slip" => [Key.Enter, .. Steps(6)],
        "close" => [.. Way("slip"), new Key('c')],
        "papers" => [.. Way("slip"), new Key('v')],
        "help" => [.. Way("pots"), new Key('?')],
        "calendar" => [new Key('d')],
        "debts-ahead" => [new Key('-')],
        "outlook" => [new Key('j')],
        "bills-ahead" => [new Key('q')],
        "count" => [new Key('w')],
        "household" => [new Key('h')],
        "ledger" => [new Key('l')],
        "ledger-filter" => [new Key('l'), new Key('o')],
        "undo" => [.. Closed, new Key('l'), Key.Enter, .. Enumerable.Repeat(Key.CursorDown, 6), new Key('u')],
        "reopen" => [.. Closed, new Key('l'), new Key('z')],
        "leave" => [Key.Esc],
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no such screen"),
    };

    public void Dispose()
    {
        app.End(token);
        view.Dispose();
        app.Dispose();
        store.Dispose();
        folder.Dispose();
    }

    private static IEnumerable<Key> Closed => [.. Way("close"), Key.Enter];

    private static IEnumerable<Key> Steps(int count) => Enumerable.Repeat(Key.CursorRight, count);
}
