using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Drafts;
using Payday.Screens.Frames;
using Payday.Screens.Setup.Forms;
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
    private readonly MonthLine month = new(work);

    /// <inheritdoc/>
    public override string Title => list.Title;

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words => SetupWords.All;

    /// <inheritdoc/>
    protected override string Aside => guide?.Here ?? "";

    /// <inheritdoc/>
    protected override int Count => list.Ordered(work.Draft).Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Count == 0 ? Array.Empty<Binding>() : [new Binding(Key.Enter, "Enter", "open", $"This {list.Noun}'s fields.", Open)],
        Letters.Add.Does("add", $"Another {list.Noun}.", Add),
        Letters.List.Does("lines", $"Type {list.Noun}s as lines, one after the other, like {list.LineExample}; each is shown as it was read before it is taken. Lines can be pasted on this list too.", AsLines),
        .. work.LastTaken?.List == list.Member ? [Letters.Undo.Does("take back", $"Take back the {list.Noun}s that were taken last from lines; they are lines again.", TakeBack)] : Array.Empty<Binding>(),
        .. GuideKeys.Of(guide),
        .. Count == 0 ? Array.Empty<Binding>() : Moves,
    ];

    /// <inheritdoc/>
    protected override string Empty => guide is null || list.IsNeeded
        ? $"No {list.Noun} yet: i takes them as lines, like {list.LineExample}; a fills in a form."
        : $"No {list.Noun} yet: i takes them as lines, like {list.LineExample}; a fills in a form, Right goes on without.";

    /// <inheritdoc/>
    protected override string Detail => list.Help;

    /// <inheritdoc/>
    protected override string Status => list.Begun(work.Begun) is { } begun
        ? $"Begun and not complete yet: {CleanText.OneLine(begun.Name ?? $"a {list.Noun} without a name")}; a goes on with it."
        : list.Lines(work.Begun) is { IsEmpty: false } lines ? $"{"line".ToQuantity(lines.Length)} not taken yet: i shows {(lines.Length == 1 ? "it" : "them")}."
        : "";

    private IReadOnlyList<Binding> Moves =>
    [
        .. list.HasEnd ? [Letters.Days.Does("end", $"The last date of this {list.Noun}; empty lets it go on.", End)] : Array.Empty<Binding>(),
        Letters.TakeOut.Does("remove", $"Remove this {list.Noun} from the list, after a question; one that the ledger names stays.", TakeOut),
        Letters.Up.Does("move", list.IsRanked ? "Move up: cut later than the one above." : "Move up or down in the order.", () => Move(-1)) with { Name = "< >" },
        Letters.Down.Does("", list.IsRanked ? "Move down: cut sooner than the one below." : "Move down in the order.", () => Move(1)),
        new(Key.CursorUp.WithShift, "Shift+Up", "", "Move up, like <.", () => Move(-1)),
        new(Key.CursorDown.WithShift, "Shift+Down", "", "Move down, like >.", () => Move(1)),
    ];

    private (int Index, ItemDraft Item) Here => list.Ordered(work.Draft)[Math.Clamp(Cursor, 0, Count - 1)];

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            list.Columns,
            [.. list.Ordered(work.Draft).Select(row => list.Cells(row.Index, work).Select(CleanText.OneLine).ToImmutableArray())],
            [],
            decimalMark: work.Style.DecimalMark).Lay(width);
        return ([.. lines.Header.Take(1)], lines.Rows);
    }

    /// <inheritdoc/>
    public override Way TakesPaste(string text)
    {
        string told = PastedLines.Add(work, text, list.Section);
        if (list.Lines(work.Begun).IsEmpty)
        {
            Message = told;
            return Way.Stay;
        }

        LinesScreen lines = new(work, list, guide) { Message = told };
        return guide is null ? new Way.To(lines) : new Way.Instead(lines);
    }

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Under(int width) => month.Lines(work.Draft, width);

    private Way AsLines() => guide is null ? new Way.To(new LinesScreen(work, list)) : new Way.Instead(new LinesScreen(work, list, guide));

    private Way TakeBack()
    {
        Message = list.TakeBack(work) ?? "";
        return Message.Length > 0 ? Way.Stay : AsLines();
    }

    private Way Open() => new Way.To(new FormScreen(work, list.Form(work, Here.Index), list.Noun));

    private Way Add()
    {
        Cursor = Count;
        return new Way.To(new FormScreen(work, list.NewForm(work), list.Noun));
    }

    private Way End()
    {
        (int index, ItemDraft item) = Here;
        return new Way.Edit(new CellEdit(
            $"{CleanText.OneLine(item.Name!)} ends on (empty: never)",
            list.EndOf(index, work),
            text => list.End(work, index, text)));
    }

    private Way TakeOut()
    {
        (int index, ItemDraft item) = Here;
        if (item.Id is { } id && work.WhyKept(list.Member, id) is { } reason)
        {
            Message = $"{CleanText.OneLine(item.Name!)}: {reason} {list.Instead}";
            return Way.Stay;
        }

        return new Way.To(new TakeOutScreen(list.Noun, item.Name!, () => work.Put(list.Without(work.Draft, index), DraftPlace.Of(list.Member))));
    }

    private Way Move(int by)
    {
        ImmutableArray<(int Index, ItemDraft Item)> rows = list.Ordered(work.Draft);
        int to = Cursor + by;
        if (to < 0 || to >= rows.Length)
        {
            return Way.Stay;
        }

        HouseholdDraft next = list.Exchanged(work.Draft, rows[Cursor].Index, rows[to].Index);
        Message = work.Put(next, DraftPlace.Of(list.Member)) ?? work.Notice;
        Cursor = Message.Length == 0 ? to : Cursor;
        return Way.Stay;
    }
}
