using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>Asks whether to leave.</summary>
/// <param name="question">The question.</param>
/// <param name="after">What is kept and what is not.</param>
/// <param name="leaves">The key that leaves.</param>
internal sealed class LeaveScreen(string question, string after, Binding leaves) : Screen
{
    /// <summary>Whether to leave the program.</summary>
    public LeaveScreen()
        : this(
            "Leave Payday?",
            "Everything entered is kept, and the next start goes on where you are.",
            new Binding(Key.Enter, "Enter", "leave", "Leave Payday.", () => Way.Quit))
    {
    }

    /// <inheritdoc/>
    public override string Title => "Leave";

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Bindings => [leaves, new(Key.Esc, "Esc", "stay", "Go on.", () => Way.Back)];

    /// <summary>Whether to leave the program from a household that is thrown away.</summary>
    public static LeaveScreen ThrownAway() => new(
        "Leave Payday?",
        "This is the demo household: what was tried in it is thrown away. Nothing of yours was touched.",
        new Binding(Key.Enter, "Enter", "leave", "Leave Payday, and throw the demo household away.", () => Way.Quit));

    /// <summary>Whether to leave the demo household for the screen it was loaded from.</summary>
    public static LeaveScreen Demo(Func<Screen> back) => new(
        "Leave the demo household?",
        "What was tried in it is thrown away, and the first start shows again: there your own household can be set up. Nothing of yours was touched.",
        new Binding(Key.Enter, "Enter", "leave the demo", "Throw the demo household away, and go back to the first start.", () => new Way.Afresh(back())));

    /// <summary>Whether to leave where there was only a look.</summary>
    public static LeaveScreen ReadOnly() => new(
        "Leave Payday?",
        "Nothing was changed here. The other Payday has the household open as before.",
        new Binding(Key.Enter, "Enter", "leave", "Leave Payday.", () => Way.Quit));

    /// <inheritdoc/>
    public override TextFrame Draw(Size size) => TextFrame.Of(
        size,
        [FrameLine.Of(" " + question, Ink.Strong), FrameLine.Empty],
        TextWrap.Lines(after, size.Width - 2).Select(line => FrameLine.Of(" " + line)),
        [KeyBar.Of(Bindings, size.Width)]);
}
