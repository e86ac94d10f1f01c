using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>Asks whether to leave.</summary>
internal sealed class LeaveScreen : Screen
{
    /// <inheritdoc/>
    public override string Title => "Leave";

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Bindings =>
    [
        new(Key.Enter, "Enter", "leave", "Leave Payday.", () => Way.Quit),
        new(Key.Esc, "Esc", "stay", "Go on.", () => Way.Back),
    ];

    /// <inheritdoc/>
    public override TextFrame Draw(Size size) => TextFrame.Of(
        size,
        [FrameLine.Of(" Leave Payday?", Ink.Strong), FrameLine.Empty],
        TextWrap.Lines("Everything entered is kept, and the next start goes on where you are. Only the demo household is thrown away.", size.Width - 2).Select(line => FrameLine.Of(" " + line)),
        [KeyBar.Of(Bindings, size.Width)]);
}
