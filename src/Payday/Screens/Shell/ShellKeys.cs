using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>The keys that most screens share.</summary>
internal static class ShellKeys
{
    /// <summary>One level back.</summary>
    public static Binding Back { get; } = new(Key.Esc, "Esc", "back", "One level back; nothing is lost.", () => Way.Back);

    /// <summary>Leave, from anywhere; see <see cref="Screen.Leaving"/>.</summary>
    public static Binding Leave { get; } = Leaves(() => new LeaveScreen());

    /// <summary>Leave, with the question that there is.</summary>
    public static Binding Leaves(Func<LeaveScreen> question) =>
        new(Key.C.WithCtrl, "Ctrl+C", "", "Leave Payday, after a question that says what is kept.", () => new Way.To(question()));

    /// <summary>A screen's help.</summary>
    public static Binding Help(Screen screen) =>
        new(new Key('?'), "?", "help", "This screen's keys and words.", () => new Way.To(new HelpScreen(screen)));
}
