using System.Drawing;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Setup;

/// <summary>Asks whether an item is to be taken out.</summary>
/// <param name="noun">What it is.</param>
/// <param name="name">Its name.</param>
/// <param name="takeOut">Takes it out; returns why not, or null.</param>
internal sealed class TakeOutScreen(string noun, string name, Func<string?> takeOut) : Screen
{
    /// <inheritdoc/>
    public override string Title => $"Remove {CleanText.OneLine(name)}";

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Bindings =>
    [
        new(Key.Enter, "Enter", "remove", $"Remove the {noun}.", TakeOut),
        new(Key.Esc, "Esc", "keep", $"Keep the {noun}.", () => Way.Back),
    ];

    /// <inheritdoc/>
    public override TextFrame Draw(Size size) => TextFrame.Of(
        size,
        [FrameLine.Of($" Remove {CleanText.OneLine(name)}?", Ink.Strong), FrameLine.Empty],
        TextWrap.Lines($"The {noun} goes from the household, with all that was entered for it. No payday has been closed with it, so no record of money is lost.", size.Width - 2)
            .Select(line => FrameLine.Of(" " + line)),
        [.. TextWrap.Lines(Message.Length == 0 ? " " : Message, size.Width - 2).Select(line => FrameLine.Of(" " + line, Ink.Alert)), KeyBar.Of(Bindings, size.Width)]);

    private Way TakeOut()
    {
        Message = takeOut() ?? "";
        return Message.Length == 0 ? Way.Back : Way.Stay;
    }
}
