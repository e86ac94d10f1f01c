using System.Collections.Immutable;
using System.Drawing;
using Humanizer;
using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>A screen of lines to read, longer than the terminal or not.</summary>
internal abstract class PageScreen : Screen
{
    private int first;
    private int room = 1;
    private (object Source, int Width, IReadOnlyList<FrameLine> Lines)? kept;

    /// <inheritdoc/>
    public sealed override IReadOnlyList<Binding> Bindings =>
    [
        .. Keys,
        new(Key.CursorDown, "Down", "", "Further down.", () => Scroll(1)),
        new(Key.CursorUp, "Up", "", "Further up.", () => Scroll(-1)),
        new(Key.PageDown, "PgDn", "", "A screen further down.", () => Scroll(Leaf)),
        new(Key.PageUp, "PgUp", "", "A screen further up.", () => Scroll(-Leaf)),
        .. LastKeys,
    ];

    /// <summary>The keys of the screen itself.</summary>
    protected virtual IReadOnlyList<Binding> Keys => [];

    /// <summary>Help and the way back, last on the bottom line.</summary>
    protected virtual IReadOnlyList<Binding> LastKeys => [ShellKeys.Help(this), ShellKeys.Back];

    /// <summary>What stands at the right end of the title.</summary>
    protected virtual string Aside => "";

    /// <summary>Whether a rule stands under the title.</summary>
    protected virtual bool HasRule => true;

    /// <summary>How many lines of the page are in view.</summary>
    protected int Room => room;

    /// <inheritdoc/>
    public override void ToTop() => first = 0;

    /// <inheritdoc/>
    public override TextFrame Draw(Size size)
    {
        string[] message = [.. TextWrap.Lines(Message, size.Width - 2)];
        FrameLine[] head = [FrameLine.Of(TextColumns.Ends(" " + CleanText.OneLine(Title), Aside + " ", size.Width), Ink.Strong), .. HasRule ? [FrameLine.Rule(size.Width)] : Array.Empty<FrameLine>()];
        room = Math.Max(1, size.Height - head.Length - 1 - message.Length);
        IReadOnlyList<FrameLine> lines = Page(size.Width);

        // The line that says how much is below has room of its own only where something is.
        room = lines.Count > room ? Math.Max(1, room - 1) : room;
        first = Math.Clamp(first, 0, Math.Max(0, lines.Count - room));
        ImmutableArray<FrameLine> shown = [.. Enumerable.Range(first, Math.Min(room, lines.Count - first)).Select(i => lines[InView(i)])];

        // A heading goes with what it heads.
        shown = first + room < lines.Count && shown is [.., { IsHeading: true }] ? shown.RemoveAt(shown.Length - 1) : shown;
        int below = Math.Max(0, lines.Count - first - shown.Length);
        string[] note = below > 0 ? [$" {"more line".ToQuantity(below)} below (Down, PgDn)"] : lines.Count > room ? [""] : [];
        return TextFrame.Of(
            size,
            head,
            shown,
            [
                .. note.Select(line => FrameLine.Of(line, Ink.Quiet)),
                .. message.Select(line => FrameLine.Of(" " + line, MessageInk)),
                KeyBar.Of(Bindings, size.Width),
            ]);
    }

    /// <summary>
    /// All that the lines come from beside the width: while it is equal, the page isn't made anew at a key. Null for a page that is made anew each time.
    /// </summary>
    protected virtual object? Source => null;

    /// <summary>All lines for a width. Of a list only those that show are asked for.</summary>
    protected abstract IEnumerable<FrameLine> Lines(int width);

    /// <summary>The table of the page whose headings stay in view; where <see cref="Lines"/> made it last. Null for none.</summary>
    protected virtual PageTable? Table => null;

    // The headings that stay take the place of lines that would be missed by whoever turns a whole page.
    private int Leaf => Math.Max(1, room - (Table?.Headings ?? 0));

    /// <summary>A rule over the whole width.</summary>
    protected static FrameLine Rule(int width) => FrameLine.Rule(width);

    private int InView(int line) => Table is { } table && table.StaysAt(first) && line < first + table.Headings ? table.First + line - first : line;

    private IReadOnlyList<FrameLine> Page(int width)
    {
        object? source = Source;
        if (source is not null && kept is { } last && last.Width == width && source.Equals(last.Source))
        {
            return last.Lines;
        }

        IEnumerable<FrameLine> made = Lines(width);
        IReadOnlyList<FrameLine> lines = made as IReadOnlyList<FrameLine> ?? [.. made];
        kept = source is null ? null : (source, width, lines);
        return lines;
    }

    private Way Scroll(int by)
    {
        first += by;
        return Way.Stay;
    }
}
