using Payday.Screens.Frames;
using Payday.Text;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Screens.Shell;

/// <summary>How inks show on a terminal: in colour or by weight alone, with all characters or ASCII.</summary>
/// <param name="colour">Whether colours may be used; they are never the only sign of anything.</param>
/// <param name="ascii">Whether only ASCII may be written.</param>
internal sealed class Look(bool colour, bool ascii)
{
    /// <summary>
    /// The look for an environment: <c>NO_COLOR</c> (no-color.org) and an unknown terminal rule colour out, a locale that is not UTF-8
    /// rules everything but ASCII out.
    /// </summary>
    public static Look For(Func<string, string?> variable)
    {
        bool colour = string.IsNullOrEmpty(variable("NO_COLOR")) && !string.IsNullOrEmpty(variable("TERM"));
        string locale = LocaleVariables.Select(variable).FirstOrDefault(value => !string.IsNullOrEmpty(value)) ?? "";
        bool utf8 = locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
        return new Look(colour, !utf8);
    }

    // POSIX.1-2017, 8.2: the first that is set decides.
    private static readonly string[] LocaleVariables = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>The text as this terminal can show it, as many columns wide.</summary>
    public string Fold(string text) => ascii ? TextFold.ToAscii(text) : text;

    /// <summary>The attribute of an ink.</summary>
    public Attribute Of(Ink ink) => ink switch
    {
        Ink.Here => Styled(TextStyle.Reverse),
        Ink.Strong => Styled(TextStyle.Bold),
        Ink.Quiet => Styled(TextStyle.None),
        Ink.Hand => colour ? new Attribute(new Color(StandardColor.Yellow), Color.None, TextStyle.Bold) : Styled(TextStyle.Bold),
        Ink.Done => colour ? new Attribute(new Color(StandardColor.Green), Color.None) : Styled(TextStyle.None),
        _ => Styled(TextStyle.None),
    };

    private static Attribute Styled(TextStyle style) => new(Color.None, Color.None, style);
}
