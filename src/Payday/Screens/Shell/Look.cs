using Payday.Charts;
using Payday.Core.Households;
using Payday.Screens.Frames;
using Payday.Text;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Screens.Shell;

/// <summary>How inks and characters show on a terminal.</summary>
/// <param name="signs">Which characters it has.</param>
/// <param name="noColour">Whether the person wants no colour anywhere (NO_COLOR).</param>
internal sealed class Look(TerminalSigns signs, bool noColour = false)
{
    // POSIX.1-2017, 8.2: the first that is set decides.
    private static readonly string[] LocaleVariables = ["LC_ALL", "LC_CTYPE", "LANG"];

    /// <summary>The terminal's background; the terminal may say it at any time.</summary>
    public Background Background { get; set; }

    /// <summary>The look that the household has chosen.</summary>
    public ScreenLook Chosen { get; set; }

    private Palette Palette => (Chosen, Background) switch
    {
        (ScreenLook.HighContrast, _) when !noColour => Palette.HighContrast,
        (ScreenLook.Plain, _) => Palette.Plain,
        _ when noColour => Palette.Plain,
        (ScreenLook.Dark, _) or (ScreenLook.Automatic, Background.Dark) => Palette.Dark,
        (ScreenLook.Light, _) or (ScreenLook.Automatic, Background.Light) => Palette.Light,
        _ => Palette.Plain,
    };

    /// <summary>
    /// The look for an environment: a locale that is not UTF-8 rules everything but ASCII out, the Linux console has lines and
    /// whole blocks but no check mark, and NO_COLOR that isn't empty (no-color.org) all colours.
    /// </summary>
    /// <param name="variable">The environment.</param>
    public static Look For(Func<string, string?> variable)
    {
        string locale = LocaleVariables.Select(variable).FirstOrDefault(value => !string.IsNullOrEmpty(value)) ?? "";
        bool utf8 = locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase);
        return new Look(
            !utf8 ? TerminalSigns.Ascii : variable("TERM") == "linux" ? TerminalSigns.Console : TerminalSigns.All,
            !string.IsNullOrEmpty(variable("NO_COLOR")));
    }

    /// <summary>The text as this terminal can show it, as many columns wide.</summary>
    public string Fold(string text) => (Chosen == ScreenLook.Plain ? TerminalSigns.Ascii : signs) switch
    {
        TerminalSigns.Ascii => TextFold.ToAscii(text),
        TerminalSigns.Console => TextFold.To(Bars.InHalves(text), one => !Bars.IsFine(one) && one != RowSigns.Done),
        _ => text,
    };

    /// <summary>The text with its bars and charts as this terminal can show them, and all else as it is.</summary>
    public string FoldDrawn(string text) => signs switch
    {
        TerminalSigns.Ascii => TextFold.To(text, static one => !Bars.IsDrawn(one)),
        TerminalSigns.Console => Fold(text),
        _ => text,
    };

    /// <summary>How an ink shows.</summary>
    public Attribute Of(Ink ink) => Palette[ink];
}
