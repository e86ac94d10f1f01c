using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Tests.Screens;

/// <summary>Whether everything reads on light and on dark: WCAG 2.2, 1.4.3, 4.5 : 1, with relative luminance as defined there.</summary>
public class LookTests
{
    private const double Least = 4.5;

    // The sixteen colours, from 0 to 15. The third are the basic colours of HTML 4.01, 6.5; xterm's (XTerm-col.ad) and VGA's from memory.
    private static readonly (string Name, int[] Colours)[] Palettes =
    [
        ("xterm", [0x000000, 0xCD0000, 0x00CD00, 0xCDCD00, 0x0000EE, 0xCD00CD, 0x00CDCD, 0xE5E5E5, 0x7F7F7F, 0xFF0000, 0x00FF00, 0xFFFF00, 0x5C5CFF, 0xFF00FF, 0x00FFFF, 0xFFFFFF]),
        ("VGA and the Linux console", [0x000000, 0xAA0000, 0x00AA00, 0xAA5500, 0x0000AA, 0xAA00AA, 0x00AAAA, 0xAAAAAA, 0x555555, 0xFF5555, 0x55FF55, 0xFFFF55, 0x5555FF, 0xFF55FF, 0x55FFFF, 0xFFFFFF]),
        ("HTML", [0x000000, 0x800000, 0x008000, 0x808000, 0x000080, 0x800080, 0x008080, 0xC0C0C0, 0x808080, 0xFF0000, 0x00FF00, 0xFFFF00, 0x0000FF, 0xFF00FF, 0x00FFFF, 0xFFFFFF]),
    ];

    [Fact]
    public void Contrast_KnownPairs_IsAsPublished()
    {
        Assert.Equal(21, Contrast(0x000000, 0xFFFFFF), 3);
        Assert.Equal(1, Contrast(0x123456, 0x123456), 3);

        // The grey that is widely given as the lightest that reads on white.
        Assert.InRange(Contrast(0x767676, 0xFFFFFF), 4.54, 4.55);
    }

    [Fact]
    public void Of_EachInk_ReadsOnLightAndDark() => Assert.All(Enum.GetValues<Ink>(), ink =>
    {
        Attribute shown = Look.Of(ink);
        Assert.True(Reads(shown.Foreground) && Reads(shown.Background), $"{ink} shows in {shown.Foreground} on {shown.Background}");
    });

    // Why there is no colour: none of the sixteen would do.
    [Fact]
    public void Palettes_OfSixteen_HaveNoColourThatReadsOnBoth() =>
        Assert.All(Palettes, palette => Assert.DoesNotContain(palette.Colours, ReadsOnBoth));

    [Fact]
    public void Of_WhatNeedsDoing_StandsOut() => Assert.NotEqual(Look.Of(Ink.Plain), Look.Of(Ink.Alert));

    // The terminal's own colours read: somebody chose them together.
    private static bool Reads(Color colour) => colour == Color.None
        || Palettes.All(palette => ReadsOnBoth(palette.Colours[(int)colour.GetClosestNamedColor16()]));

    private static bool ReadsOnBoth(int colour) => Contrast(colour, 0x000000) >= Least && Contrast(colour, 0xFFFFFF) >= Least;

    private static double Contrast(int one, int other)
    {
        double lighter = Math.Max(Luminance(one), Luminance(other));
        double darker = Math.Min(Luminance(one), Luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double Luminance(int colour) =>
        (0.2126 * Linear(colour >> 16)) + (0.7152 * Linear((colour >> 8) & 0xFF)) + (0.0722 * Linear(colour & 0xFF));

    private static double Linear(int part)
    {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
