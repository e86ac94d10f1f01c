using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Screens.Frames;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Lists;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Setup;

/// <summary>One of the household's lists.</summary>
/// <param name="work">The household.</param>
/// <param name="list">Which list.</param>
/// <param name="guide">Where Right leads, or null.</param>
internal sealed class ListScreen(SetupWork work, SetupList list, ISetupGuide? guide = null) : CursorScreen
{
    /// <inheritdoc/>
    public override string Title => list.Title;

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words => SetupWords.All;

    /// <inheritdoc/>
    protected override string Aside => guide?.Here ?? "";

    /// <inheritdoc/>
    protected override int Count => work.Items(list.Key).Count;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Count == 0 ? Array.Empty<Binding>() : [new Binding(Key.Enter, "Enter", "open", $"This {list.Noun}'s fields.", Open)],
        new(new Key('a'), "a", "add", $"Another {list.Noun}.", Add),
        .. GuideKeys.Of(guide),
        .. Count == 0 ? Array.Empty<Binding>() : Moves,
    ];

    /// <inheritdoc/>
    protected override string Empty => guide is null || list.Key == "sources"
        ? $"No {list.Noun} yet: a adds one."
        : $"No {list.Noun} yet: a adds one, Right goes on without.";

    /// <inheritdoc/>
    protected override string Detail => list.Help;

    /// <inheritdoc/>
    protected override string Status => work.Begun(list.Key) is { } begun
        ? $"Begun and not complete yet: {CleanText.OneLine(begun["name"]?.ToString() ?? $"a {list.Noun} without a name")}; a goes on with it."
        : "";

    private IReadOnlyList<Binding> Moves =>
    [
        .. list.HasEnd ? [new Binding(new Key('e'), "e", "end", $"The last date of this {list.Noun}; empty lets it go on.", End)] : Array.Empty<Binding>(),
        new(new Key(list.HasEnd ? 'x' : 'e'), list.HasEnd ? "x" : "e", "take out", $"Take this {list.Noun} out of the list, after a question; one that the ledger names stays.", TakeOut),
        new(new Key('<'), "< >", "move", list.Key == "pots" ? "Move up: cut later than the one above." : "Move up or down in the order.", () => Move(-1)),
        new(new Key('>'), ">", "", list.Key == "pots" ? "Move down: cut sooner than the one below." : "Move down in the order.", () => Move(1)),
        new(Key.CursorUp.WithShift, "Shift+Up", "", "Move up, like <.", () => Move(-1)),
        new(Key.CursorDown.WithShift, "Shift+Down", "", "Move down, like >.", () => Move(1)),
    ];

    private (int Index, JsonObject Item) Here => list.Ordered(work)[Math.Clamp(Cursor, 0, Count - 1)];

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            list.Columns,
            [.. list.Ordered(work).Select(row => list.Cells(row.Item, work).Select(CleanText.OneLine).ToImmutableArray())],
            [],
            decimalMark: work.Style.DecimalMark).Lay(width);
        return ([.. lines.Header.Take(1)], lines.Rows);
    }

    private Way Open() => new Way.To(new FormScreen(work, ItemForm.OfItem(work, list, Here.Index), list.Noun));

    private Way Add()
    {
        Cursor = Count;
        return new Way.To(new FormScreen(work, ItemForm.OfNew(work, list), list.Noun));
    }

    private Way End()
    {
        ItemForm form = ItemForm.OfItem(work, list, Here.Index);
        return new Way.Edit(new CellEdit(
            $"{CleanText.OneLine(Here.Item["name"]!.ToString())} ends on (empty: never)",
            Here.Item["until"]?.ToString() ?? "",
            text => form.Type(SetupList.Until, text)));
    }

    private Way TakeOut()
    {
        (int index, JsonObject item) = Here;
        string name = item["name"]!.ToString();
        if (item["id"]?.ToString() is { } id && work.WhyKept(list.Key, id) is { } reason)
        {
            Message = $"{CleanText.OneLine(name)}: {reason} {InsteadOf()}";
            return Way.Stay;
        }

        return new Way.To(new TakeOutScreen(list.Noun, name, () =>
        {
            JsonObject next = work.Copy();
            ((JsonArray)next[list.Key]!).RemoveAt(index);
            return work.Put(next, FieldPath.Of(list.Key));
        }));
    }

    private string InsteadOf() => list.Key switch
    {
        "debts" => "It asks for nothing once it is paid.",
        "pots" => "With an amount of 0 it is filled no more.",
        _ => "e ends it on a date.",
    };

    private Way Move(int by)
    {
        ImmutableArray<(int Index, JsonObject Item)> rows = list.Ordered(work);
        int to = Cursor + by;
        if (to < 0 || to >= rows.Length)
        {
            return Way.Stay;
        }

        JsonObject next = work.Copy();
        list.Exchange(next, rows[Cursor].Index, rows[to].Index);
        Message = work.Put(next, FieldPath.Of(list.Key)) ?? work.Notice;
        Cursor = Message.Length == 0 ? to : Cursor;
        return Way.Stay;
    }
}
