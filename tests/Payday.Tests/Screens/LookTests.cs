using Payday.Core.Households;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Payday.Tests.Screens;

/// <summary>Whether everything reads on light and on dark: WCAG 2.2, 1.4.3, 4.5 : 1, with relative luminance as defined there.</summary>
public class LookTests
{
    private const double Least = 4.5;
    private const double LeastInHighContrast = 7;

    // The sixteen colours, from 0 to 15. The third are the basic colours of HTML 4.01, 6.5; the others, xterm's (XTerm-col.ad),
    // VGA's, Campbell of Windows and Tango of GNOME, are from memory.
    private static readonly (string Name, int[] Colours)[] Palettes =
    [
        ("xterm", [0x000000, 0xCD0000, 0x00CD00, 0xCDCD00, 0x0000EE, 0xCD00CD, 0x00CDCD, 0xE5E5E5, 0x7F7F7F, 0xFF0000, 0x00FF00, 0xFFFF00, 0x5C5CFF, 0xFF00FF, 0x00FFFF, 0xFFFFFF]),
        ("VGA and the Linux console", [0x000000, 0xAA0000, 0x00AA00, 0xAA5500, 0x0000AA, 0xAA00AA, 0x00AAAA, 0xAAAAAA, 0x555555, 0xFF5555, 0x55FF55, 0xFFFF55, 0x5555FF, 0xFF55FF, 0x55FFFF, 0xFFFFFF]),
        ("HTML", [0x000000, 0x800000, 0x008000, 0x808000, 0x000080, 0x800080, 0x008080, 0xC0C0C0, 0x808080, 0xFF0000, 0x00FF00, 0xFFFF00, 0x0000FF, 0xFF00FF, 0x00FFFF, 0xFFFFFF]),
        ("Campbell", [0x0C0C0C, 0xC50F1F, 0x13A10E, 0xC19C00, 0x0037DA, 0x881798, 0x3A96DD, 0xCCCCCC, 0x767676, 0xE74856, 0x16C60C, 0xF9F1A5, 0x3B78FF, 0xB4009E, 0x61D6D6, 0xF2F2F2]),
        ("Tango", [0x000000, 0xCC0000, 0x4E9A06, 0xC4A000, 0x3465A4, 0x75507B, 0x06989A, 0xD3D7CF, 0x555753, 0xEF2929, 0x8AE234, 0xFCE94F, 0x729FCF, 0xAD7FA8, 0x34E2E2, 0xEEEEEC]),
    ];

    // The lightest that passes for dark, and the darkest that passes for light.
    private static readonly Color LightestDark = Color.Parse("#2B2B2B");
    private static readonly Color DarkestLight = Color.Parse("#F4F4F4");

    [Fact]
    public void Contrast_KnownPairs_IsAsPublished()
    {
        Assert.Equal(21, Contrast.Between(Rgb(0x000000), Rgb(0xFFFFFF)), 3);
        Assert.Equal(1, Contrast.Between(Rgb(0x123456), Rgb(0x123456)), 3);

        // The grey that is widely given as the lightest that reads on white.
        Assert.InRange(Contrast.Between(Rgb(0x767676), Rgb(0xFFFFFF)), 4.54, 4.55);
    }

    [Theory]
    [InlineData(0x000000, "Dark")]
    [InlineData(0x1E1E1E, "Dark")]
    [InlineData(0x300A24, "Dark")]
    [InlineData(0x002B36, "Dark")]
    [InlineData(0x3C3C3C, "Unknown")]
    [InlineData(0x808080, "Unknown")]
    [InlineData(0xE0E0E0, "Unknown")]
    [InlineData(0xFDF6E3, "Light")]
    [InlineData(0xFFFFFF, "Light")]
    public void Of_BackgroundOfATerminal_IsDarkLightOrNeither(int background, string said) => Assert.Equal(said, Contrast.Of(Rgb(background)).ToString());

    [Fact]
    public void Of_TheEdges_AreStillDarkAndLight()
    {
        Assert.Equal(Background.Dark, Contrast.Of(LightestDark));
        Assert.Equal(Background.Light, Contrast.Of(DarkestLight));
    }

    [Fact]
    public void Dark_EachInk_ReadsOnEveryBackgroundThatIsDark() => AllRead(Palette.Dark, [Rgb(0), LightestDark], Least);

    [Fact]
    public void Light_EachInk_ReadsOnEveryBackgroundThatIsLight() => AllRead(Palette.Light, [Rgb(0xFFFFFF), DarkestLight], Least);

    [Fact]
    public void Plain_EachInk_HasTheTerminalsOwnColours() => Assert.All(Enum.GetValues<Ink>(), ink =>
    {
        Assert.Equal(Color.None, Palette.Plain[ink].Foreground);
        Assert.Equal(Color.None, Palette.Plain[ink].Background);
    });

    [Fact]
    public void HighContrast_EachInk_HasBothColoursAndReadsBetter() => Assert.All(Enum.GetValues<Ink>(), ink => Assert.All(Palettes, palette =>
    {
        Attribute shown = Palette.HighContrast[ink];
        double ratio = Contrast.Between(Of(palette.Colours, shown.Foreground), Of(palette.Colours, shown.Background));
        Assert.True(ratio >= LeastInHighContrast, $"{ink} has {ratio:0.00} : 1 with the colours of {palette.Name}");
    }));

    // Why there are two palettes: none of the sixteen would do on every terminal.
    [Fact]
    public void Palettes_OfSixteen_HaveNoColourThatReadsOnBoth() => Assert.DoesNotContain(
        Enumerable.Range(0, 16),
        number => Palettes.All(palette => Contrast.Between(Rgb(palette.Colours[number]), Rgb(0)) >= Least && Contrast.Between(Rgb(palette.Colours[number]), Rgb(0xFFFFFF)) >= Least));

    [Theory]
    [InlineData("Automatic", "Unknown", false, "Plain")]
    [InlineData("Automatic", "Dark", false, "Dark")]
    [InlineData("Automatic", "Light", false, "Light")]
    [InlineData("Dark", "Unknown", false, "Dark")]
    [InlineData("Light", "Dark", false, "Light")]
    [InlineData("HighContrast", "Light", false, "HighContrast")]
    [InlineData("Plain", "Dark", false, "Plain")]
    [InlineData("Automatic", "Dark", true, "Plain")]
    [InlineData("Dark", "Dark", true, "Plain")]
    [InlineData("HighContrast", "Dark", true, "Plain")]
    public void Of_ChoiceAndBackground_TakesThePalette(string chosen, string background, bool noColour, string palette)
    {
        var look = new Look(TerminalSigns.All, noColour) { Chosen = Enum.Parse<ScreenLook>(chosen), Background = Enum.Parse<Background>(background) };
        Palette expected = palette switch { "Dark" => Palette.Dark, "Light" => Palette.Light, "HighContrast" => Palette.HighContrast, _ => Palette.Plain };

        Assert.All(Enum.GetValues<Ink>(), ink => Assert.Equal(expected[ink], look.Of(ink)));
    }

    [Theory]
    [InlineData("C.UTF-8", "xterm-256color", "── ██▎··· ⣀ ✓")]
    [InlineData("C.UTF-8", "linux", "── ██···· . v")]
    [InlineData("C", "xterm", "-- ##.... . v")]
    public void Fold_LinesAndBars_AreWhatTheTerminalHas(string locale, string terminal, string shown)
    {
        Look look = Look.For(name => name switch { "LANG" => locale, "TERM" => terminal, _ => null });

        Assert.Equal(shown, look.Fold("── ██▎··· ⣀ ✓"));
    }

    // What a command answers: its bars and charts fold, a name stays as the person wrote it.
    [Theory]
    [InlineData("C.UTF-8", "Café ██▎··· │⣀")]
    [InlineData("C", "Café ##.... |.")]
    public void FoldDrawn_OfAnAnswer_LeavesWords(string locale, string shown) =>
        Assert.Equal(shown, Look.For(name => name == "LC_ALL" ? locale : null).FoldDrawn("Café ██▎··· │⣀"));

    [Fact]
    public void Fold_PlainLook_IsAscii() => Assert.Equal("-- ##.", new Look(TerminalSigns.All) { Chosen = ScreenLook.Plain }.Fold("── ██·"));

    [Fact]
    public void Of_WhatNeedsDoing_StandsOut() => Assert.All(
        (Palette[])[Palette.Plain, Palette.Dark, Palette.Light, Palette.HighContrast], palette => Assert.NotEqual(palette[Ink.Plain], palette[Ink.Alert]));

    // A figure that was changed and good news are no alarm, and what is done is no heading.
    [Fact]
    public void Of_WhatIsChangedOrDone_LooksLikeNeitherAnAlarmNorAHeading() => Assert.All((Palette[])[Palette.Dark, Palette.Light, Palette.HighContrast], palette =>
    {
        Assert.NotEqual(palette[Ink.Alert].Foreground, palette[Ink.Changed].Foreground);
        Assert.NotEqual(palette[Ink.Alert].Foreground, palette[Ink.Done].Foreground);
        Assert.NotEqual(palette[Ink.Strong], palette[Ink.Done]);
    });

    // The terminal's own colours read: somebody chose them together.
    private static void AllRead(Palette palette, Color[] backgrounds, double least) => Assert.All(
        from ink in Enum.GetValues<Ink>() where palette[ink].Foreground != Color.None from terminal in Palettes from background in backgrounds select (ink, terminal, background),
        one =>
        {
            Assert.Equal(Color.None, palette[one.ink].Background);
            double ratio = Contrast.Between(Of(one.terminal.Colours, palette[one.ink].Foreground), one.background);
            Assert.True(ratio >= least, $"{one.ink} has {ratio:0.00} : 1 on {one.background} with the colours of {one.terminal.Name}");
        });

    private static Color Of(int[] colours, Color named) => Rgb(colours[Index(named.GetClosestNamedColor16())]);

    // The library's order of the names is that of old PCs, with blue and red exchanged.
    private static int Index(ColorName16 name) => ((int)name & 8) | (((int)name & 1) << 2) | ((int)name & 2) | (((int)name & 4) >> 2);

    private static Color Rgb(int value) => new((value >> 16) & 0xFF, (value >> 8) & 0xFF, value & 0xFF);
}
