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

    /// <inheritdoc/>
    public sealed override IReadOnlyList<Binding> Bindings =>
    [
        .. Keys,
        new(Key.CursorDown, "Down", "", "Further down.", () => Scroll(1)),
        new(Key.CursorUp, "Up", "", "Further up.", () => Scroll(-1)),
        new(Key.PageDown, "PgDn", "", "A screen further down.", () => Scroll(room)),
        new(Key.PageUp, "PgUp", "", "A screen further up.", () => Scroll(-room)),
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
        ImmutableArray<FrameLine> lines = [.. Lines(size.Width)];

        // The line that says how much is below has room of its own only where something is.
        room = lines.Length > room && message.Length == 0 ? Math.Max(1, room - 1) : room;
        first = Math.Clamp(first, 0, Math.Max(0, lines.Length - room));
        ImmutableArray<FrameLine> shown = [.. lines.Skip(first).Take(room)];

        // A heading goes with what it heads.
        shown = first + room < lines.Length && shown is [.., { IsHeading: true }] ? shown.RemoveAt(shown.Length - 1) : shown;
        int below = Math.Max(0, lines.Length - first - shown.Length);
        string[] note = below > 0 ? [$" {"more line".ToQuantity(below)} below (Down, PgDn)"] : lines.Length > room ? [""] : [];
        return TextFrame.Of(
            size,
            head,
            shown,
            [
                .. message.Length > 0 ? message.Select(line => FrameLine.Of(" " + line, MessageInk)) : note.Select(line => FrameLine.Of(line, Ink.Quiet)),
                KeyBar.Of(Bindings, size.Width),
            ]);
    }

    /// <summary>All lines for a width.</summary>
    protected abstract IEnumerable<FrameLine> Lines(int width);

    /// <summary>A rule over the whole width.</summary>
    protected static FrameLine Rule(int width) => FrameLine.Rule(width);

    private Way Scroll(int by)
    {
        first += by;
        return Way.Stay;
    }
}
