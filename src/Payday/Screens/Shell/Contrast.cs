using Terminal.Gui.Drawing;

namespace Payday.Screens.Shell;

/// <summary>How well colours read: relative luminance as WCAG 2.2 defines it.</summary>
/// <remarks>No amount of money is near: this is light, and a fraction of it.</remarks>
internal static class Contrast
{
    // The lightest dark and the darkest light on which every colour of the palettes has 4.5 : 1; tests hold them.
    private const double DarkUpTo = 0.025;
    private const double LightFrom = 0.9;

    /// <summary>What a background is.</summary>
    public static Background Of(Color background) => Luminance(background) switch
    {
        <= DarkUpTo => Background.Dark,
        >= LightFrom => Background.Light,
        _ => Background.Unknown,
    };

    /// <summary>The ratio of two colours, from 1 to 21.</summary>
    public static double Between(Color one, Color other)
    {
        double lighter = Math.Max(Luminance(one), Luminance(other));
        double darker = Math.Min(Luminance(one), Luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double Luminance(Color colour) =>
        (0.2126 * Linear(colour.R)) + (0.7152 * Linear(colour.G)) + (0.0722 * Linear(colour.B));

    private static double Linear(byte part)
    {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
