using System.Drawing;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Asking;

/// <summary>Asks whether all lines that weren't taken yet are to be forgotten.</summary>
/// <param name="question">What is to be forgotten, a question.</param>
/// <param name="what">What that means, a sentence or two.</param>
/// <param name="forget">Forgets it.</param>
internal sealed class ForgetScreen(string question, string what, Action forget) : Screen
{
    /// <inheritdoc/>
    public override string Title => "Forget all lines";

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Bindings =>
    [
        new(Key.Enter, "Enter", "forget", "Forget all of them.", Forget),
        new(Key.Esc, "Esc", "keep", "Keep them.", () => Way.Back),
    ];

    /// <inheritdoc/>
    public override TextFrame Draw(Size size) => TextFrame.Of(
        size,
        [FrameLine.Of($" {question}", Ink.Strong), FrameLine.Empty],
        TextWrap.Lines(what, size.Width - 2).Select(line => FrameLine.Of(" " + line)),
        [KeyBar.Of(Bindings, size.Width)]);

    private Way Forget()
    {
        forget();
        return Way.Back;
    }
}
