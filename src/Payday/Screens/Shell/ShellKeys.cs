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

    /// <summary>The character that a key types, or null.</summary>
    public static string? Typed(Key key)
    {
        string text = key.AsRune.Value >= ' ' && !key.IsCtrl && !key.IsAlt ? key.AsRune.ToString() : "";
        return text.Length == 0 ? null : text;
    }

    /// <summary>A screen's help.</summary>
    public static Binding Help(Screen screen) =>
        Letters.Help.Does("help", Letters.Help.Meaning, () => new Way.To(new HelpScreen(screen)));
}
