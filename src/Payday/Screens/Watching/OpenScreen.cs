using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Watching;

/// <summary>Offers to open the folder for changes, now that nobody else has it.</summary>
internal sealed class OpenScreen(BookWatch looking) : PageScreen
{
    /// <inheritdoc/>
    public override string Title => "Open it for changes?";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
        [new(Key.Enter, "Enter", "open", "Open the household here, to change it.", Open)];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
        [ShellKeys.Help(this), new(Key.Esc, "Esc", "only look", "Go on looking; another Payday can open it then.", Stay)];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        string[] news = [.. looking.News];
        return
        [
            .. Wrapped("The other Payday has ended; all that it stored has been read. Enter opens the household here, so that it can be changed. Esc goes on looking.", width),
            .. news.Length == 0 ? [] : Wrapped("Since you began to look:", width).Prepend(FrameLine.Empty),
            .. news.SelectMany(line => Wrapped("  " + line, width)),
        ];
    }

    private static IEnumerable<FrameLine> Wrapped(string text, int width) => TextWrap.Lines(text, width - 2).Select(line => FrameLine.Of(" " + line));

    private Way.Visit Open()
    {
        BookSession session = looking.Open();
        return new Way.Visit(new Goal.Home(session, session.News()));
    }

    private Way Stay()
    {
        looking.GiveBack();
        return Way.Back;
    }
}
