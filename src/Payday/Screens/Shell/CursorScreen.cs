using System.Collections.Immutable;
using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>A screen of rows with a cursor, and below them what the row under the cursor is about.</summary>
internal abstract class CursorScreen : Screen
{
    private const int DetailLines = 3;

    private readonly RowCursor cursor;

    /// <summary>A screen with its cursor on the first row.</summary>
    protected CursorScreen() => cursor = new RowCursor(() => Count);

    /// <inheritdoc/>
    public sealed override IReadOnlyList<Binding> Bindings =>
    [
        .. Keys,
        .. cursor.Keys,
        .. LastKeys,
    ];

    /// <summary>The row under the cursor, from 0.</summary>
    protected int Cursor
    {
        get => cursor.Row;
        set => cursor.Row = value;
    }

    /// <summary>How many rows there are.</summary>
    protected abstract int Count { get; }

    /// <summary>The keys of the screen itself.</summary>
    protected abstract IReadOnlyList<Binding> Keys { get; }

    /// <summary>The keys at the end of the bottom line.</summary>
    protected virtual IReadOnlyList<Binding> LastKeys => [ShellKeys.Help(this), ShellKeys.Back];

    /// <summary>What stands at the right end of the title.</summary>
    protected virtual string Aside => "";

    /// <summary>Lines under the title.</summary>
    protected virtual IEnumerable<FrameLine> Under(int width) => [];

    /// <summary>What stands where there are no rows.</summary>
    protected virtual string Empty => "";

    /// <summary>What the row under the cursor is about, in a sentence or two.</summary>
    protected abstract string Detail { get; }

    /// <summary>A line above the keys; empty for none.</summary>
    protected virtual string Status => "";

    /// <summary>Header and rows as text; only the rows that show are asked for.</summary>
    protected abstract (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width);

    /// <summary>The sign before a row, and how it shows.</summary>
    protected virtual (char Sign, Ink Ink) Mark(int row) => (' ', Ink.Plain);

    /// <inheritdoc/>
    public override TextFrame Draw(Size size)
    {
        int width = size.Width;
        (ImmutableArray<string> header, IReadOnlyList<string> rows) = Table(width - 2);
        FrameLine[] head =
        [
            FrameLine.Of(TextColumns.Ends(" " + CleanText.OneLine(Title), Aside + " ", width), Ink.Strong),
            .. Under(width),
            .. header.Take(1).Select(line => FrameLine.Of("  " + line, Ink.Strong)),
            FrameLine.Rule(width),
        ];
        FrameLine[] foot = [.. Foot(width)];
        cursor.Show(rows.Count, size.Height - head.Length - foot.Length - 1);
        int below = cursor.Below(rows.Count);
        string more = below > 0 ? $" {below} more below " : "";
        return TextFrame.Of(
            size,
            head,
            Count == 0
                ? TextWrap.Lines(Empty, width - 2).Select(line => FrameLine.Of(" " + line))
                : Enumerable.Range(cursor.First, Math.Min(cursor.Room, rows.Count - cursor.First)).Select(i => Row(rows[i], i, width)),
            [FrameLine.Rule(width, more), .. foot]);
    }

    /// <inheritdoc/>
    public override int Standing(int width) => Status.Length == 0 ? 0 : StatusLines(Status, width).Length;

    private FrameLine Row(string text, int row, int width)
    {
        (char sign, Ink ink) = Mark(row);
        bool here = row == Cursor;
        return FrameLine.Of($"{sign}{(here ? '>' : ' ')}{text}", here ? Ink.Here : ink).Fit(width);
    }

    // A message that is longer than its line takes the place of the detail.
    private IEnumerable<FrameLine> Foot(int width)
    {
        bool isLong = TextColumns.Width(Message) > width - 2;
        string above = isLong ? Message : Detail;
        (string below, Ink ink) = isLong || Message.Length == 0 ? (Status, Ink.Quiet) : (Message, MessageInk);

        // A status that is longer than its line takes what is above leaves empty, then rows of the table.
        string[] last = StatusLines(below, width);
        string[] lines = [.. above.Length == 0 ? [] : TextWrap.Lines(above, width - 2).Take(DetailLines)];
        for (int i = 0; i < Math.Max(lines.Length, DetailLines + 1 - last.Length); i++)
        {
            yield return FrameLine.Of(" " + lines.ElementAtOrDefault(i), isLong ? MessageInk : Ink.Plain);
        }

        foreach (string line in last)
        {
            yield return FrameLine.Of(" " + line, ink);
        }

        yield return KeyBar.Of(Bindings, width);
    }

    private static string[] StatusLines(string text, int width) => [.. TextWrap.Lines(text, width - 2).DefaultIfEmpty("").Take(DetailLines)];
}
