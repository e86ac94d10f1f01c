using System.Collections.Immutable;
using Payday.Screens.Learning;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Store.Starts;
using Terminal.Gui.Input;

namespace Payday.Screens.Start;

/// <summary>The first screen where there is no household yet.</summary>
internal sealed class StartScreen(StartDoor door) : CursorScreen
{
    private static readonly ImmutableArray<string> Ways =
        ["Set up your household", "Begin from bank statements", "Load the demo household", "Take a household file"];

    /// <inheritdoc/>
    public override string Title => "Payday";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words => SetupWords.All;

    /// <inheritdoc/>
    protected override string Aside => "no household here yet";

    /// <inheritdoc/>
    protected override int Count => Ways.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => [new(Key.Enter, "Enter", "choose", "The way under the cursor.", Choose)];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "leave", "Leave Payday, after a question that says what is kept.", () => new Way.To(Leaving)),
    ];

    /// <inheritdoc/>
    protected override string Detail => Cursor switch
    {
        0 when IsBegun => "Goes on where you left it; everything entered is kept.",
        0 => "Part by part: name and currency, notes, who pays, bills, debts, pots, bank, what is there now. It can be left at any time; how long depends on how much there is to enter.",
        1 => "Files from your bank, three months or more: bills, pay and spending are found in them, and you take, change or leave each. The rest is asked as in setting up.",
        2 => "An invented household to try everything on, in a folder that is thrown away when you leave. Yours can be set up afterwards.",
        _ => "A household file that was written or exported before. It is checked, and all that is wrong is listed.",
    };

    /// <inheritdoc/>
    protected override string Status => Cursor == 2 ? "" : $"Everything is kept in {door.Store.Folder.Path}, readable by you alone.";

    private bool IsBegun => new StartFile(door.Store.Folder).Exists;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width) =>
        ([], IsBegun ? Ways.SetItem(0, "Go on setting up your household") : Ways);

    private StartScreen AfterTheDemo() => new(door) { Message = "The demo household is thrown away. Your own can be set up here." };

    private Way Choose() => Cursor switch
    {
        0 => new Way.To(new GuideScreen(new DraftWork(door.Store, door.Today, door.Locale))),
        1 => FromStatements(),
        2 => new Way.Afresh(door.OpenDemo(AfterTheDemo)),
        _ => new Way.To(new TakeFileScreen(door)),
    };

    private Way.To FromStatements()
    {
        var work = new DraftWork(door.Store, door.Today, door.Locale);
        return new Way.To(new StatementFilesScreen(work, new Onward("set up", () => new Way.Instead(new GuideScreen(work)))));
    }
}
