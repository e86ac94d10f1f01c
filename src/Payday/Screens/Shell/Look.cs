using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Screens.Shell;

/// <summary>How inks show on a terminal: by weight, with all characters or ASCII.</summary>
/// <remarks>
/// No colours: of the sixteen that a terminal has none reads on light and on dark (tests hold them against WCAG 2.2, 1.4.3).
/// The default colour reads on both, and signs say what a colour would.
/// </remarks>
/// <param name="ascii">Whether only ASCII may be written.</param>
internal sealed class Look(bool ascii)
{
    /// <summary>
    /// The look for an environment: a locale that is not UTF-8 rules everything but ASCII out.
    /// </summary>
    public static Look For(Func<string, string?> variable)
    {
        string locale = LocaleVariables.Select(variable).FirstOrDefault(value => !string.IsNullOrEmpty(value)) ?? "";
        bool utf8 = locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
        return new Look(!utf8);
    }

    // POSIX.1-2017, 8.2: the first that is set decides.
    private static readonly string[] LocaleVariables = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>The text as this terminal can show it, as many columns wide.</summary>
    public string Fold(string text) => ascii ? TextFold.ToAscii(text) : text;

    /// <summary>The attribute of an ink.</summary>
    public static Attribute Of(Ink ink) => ink switch
    {
        Ink.Here => Styled(TextStyle.Reverse),
        Ink.Strong or Ink.Alert => Styled(TextStyle.Bold),
        _ => Styled(TextStyle.None),
    };

    private static Attribute Styled(TextStyle style) => new(Color.None, Color.None, style);
}
