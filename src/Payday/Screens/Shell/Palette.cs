using Payday.Screens.Frames;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Screens.Shell;

/// <summary>How each ink shows on one kind of background.</summary>
/// <remarks>
/// Of the sixteen colours that a terminal has none reads on light and on dark, so there are two palettes and one without
/// colours, for a background that nobody knows. Each pair has at least 4.5 : 1 (WCAG 2.2, 1.4.3), in high contrast 7 : 1
/// (1.4.6), with the values that common terminals give the sixteen; tests hold them. Signs say what a colour says.
/// </remarks>
internal sealed class Palette
{
    private readonly Attribute[] inks;

    private Palette(Func<Ink, Attribute> of) => inks = [.. Enum.GetValues<Ink>().Select(of)];

    /// <summary>The terminal's own two colours, and weight.</summary>
    public static Palette Plain { get; } = new(ink => ink switch
    {
        Ink.Here => Own(TextStyle.Reverse),
        Ink.Strong or Ink.Alert => Own(TextStyle.Bold),
        _ => Own(TextStyle.None),
    });

    /// <summary>On a dark background.</summary>
    public static Palette Dark { get; } = new(ink => ink switch
    {
        Ink.Here => Own(TextStyle.Reverse),
        Ink.Strong => On(ColorName16.BrightCyan, TextStyle.Bold),
        Ink.Rule or Ink.Bar or Ink.Changed => On(ColorName16.BrightCyan),
        Ink.Done => On(ColorName16.BrightGreen),
        Ink.Alert => On(ColorName16.BrightYellow, TextStyle.Bold),
        _ => Own(TextStyle.None),
    });

    /// <summary>
    /// On a light background, where of all shades only blue, red and black read: red is for what needs doing alone, and
    /// headings have the terminal's own colour, so that what is done isn't taken for one.
    /// </summary>
    public static Palette Light { get; } = new(ink => ink switch
    {
        Ink.Here => Own(TextStyle.Reverse),
        Ink.Strong => Own(TextStyle.Bold),
        Ink.Rule or Ink.Bar or Ink.Done or Ink.Changed => On(ColorName16.Blue),
        Ink.Alert => On(ColorName16.Red, TextStyle.Bold),
        _ => Own(TextStyle.None),
    });

    /// <summary>White and yellow on black, whatever the terminal's own colours are.</summary>
    public static Palette HighContrast { get; } = new(ink => ink switch
    {
        Ink.Here => new Attribute(ColorName16.Black, ColorName16.White, TextStyle.Bold),
        Ink.Strong or Ink.Changed => new Attribute(ColorName16.White, ColorName16.Black, TextStyle.Bold),
        Ink.Alert => new Attribute(ColorName16.BrightYellow, ColorName16.Black, TextStyle.Bold),
        _ => new Attribute(ColorName16.White, ColorName16.Black),
    });

    /// <summary>How an ink shows.</summary>
    public Attribute this[Ink ink] => inks[(int)ink];

    private static Attribute Own(TextStyle style) => new(Color.None, Color.None, style);

    private static Attribute On(ColorName16 colour, TextStyle style = TextStyle.None) => new(new Color(colour), Color.None, style);
}
