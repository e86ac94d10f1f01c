using CsCheck;
using Payday.Drawing;

namespace Payday.Tests.Drawing;

/// <summary>How wide words are, and how they are cut.</summary>
public sealed class TypeWidthsTests
{
    // Adobe's metrics of Helvetica: A 667, digits 556, full stop 278; Helvetica-Bold: A 722, digits 556.
    [Theory]
    [InlineData("A", false, 6.67)]
    [InlineData("A", true, 7.22)]
    [InlineData("1.50", false, 19.46)]
    [InlineData("1.50", true, 19.46)]
    public void Of_Words_IsWhatTheMetricsSay(string words, bool bold, double width) => Assert.Equal(width, TypeWidths.Of(words, 10, bold), 6);

    [Fact]
    public void Cut_WordsThatAreTooWide_EndInAnEllipsis()
    {
        Assert.Equal("Groceries", TypeWidths.Cut("Groceries", 60, 10));
        Assert.Equal("Groc…", TypeWidths.Cut("Groceries", 35, 10));
    }

    [Fact]
    public void CutAndWrap_AnyWords_FitTheirRoom() => Gen.Select(Gen.String[Gen.Char["aW i買é.0"], 0, 40], Gen.Double[15, 200], Gen.Bool).Sample((words, room, bold) =>
    {
        Assert.InRange(TypeWidths.Of(TypeWidths.Cut(words, room, 10, bold), 10, bold), 0, room);
        Assert.All(TypeWidths.Wrap(words, room, 10, bold), line => Assert.InRange(TypeWidths.Of(line, 10, bold), 0, room));
    });
}
