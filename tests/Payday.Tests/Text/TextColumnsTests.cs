using CsCheck;
using Payday.Text;

namespace Payday.Tests.Text;

public class TextColumnsTests
{
    // Widths: East Asian Width W is two columns, combining marks none (Unicode UAX #11), and an emoji sequence is one
    // wide character.
    [Theory]
    [InlineData("", 0)]
    [InlineData("Groceries", 9)]
    [InlineData("Cafe\u0301", 4)]
    [InlineData("買い物", 6)]
    [InlineData("한글", 4)]
    [InlineData("👩‍👩‍👧", 2)]
    [InlineData("👍🏽", 2)]
    [InlineData("🇫🇷", 2)]
    [InlineData("❤️", 2)]
    [InlineData("…", 1)]
    public void Width_Text_IsInTerminalColumns(string text, int expected) => Assert.Equal(expected, TextColumns.Width(text));

    [Theory]
    [InlineData("Groceries", 9, "Groceries")]
    [InlineData("Groceries", 8, "Groceri…")]
    [InlineData("Groceries", 1, "…")]
    [InlineData("Groceries", 0, "")]
    [InlineData("買い物", 5, "買い…")]
    [InlineData("買い物", 4, "買…")]
    [InlineData("Cafe\u0301s", 4, "Caf…")]
    [InlineData("e\u0301e\u0301e\u0301", 2, "e\u0301…")]
    [InlineData("👩‍👩‍👧👍🏽", 3, "👩‍👩‍👧…")]
    public void Truncate_ToAWidth_NeverCutsACluster(string text, int width, string expected) =>
        Assert.Equal(expected, TextColumns.Truncate(text, width));

    [Fact]
    public void Truncate_WithAnEllipsis_EndsInIt() => Assert.Equal("Gro~", TextColumns.Truncate("Groceries", 4, '~'));

    [Theory]
    [InlineData("買い", "買い  |", "  買い|")]
    [InlineData("e\u0301", "e\u0301     |", "     e\u0301|")]
    [InlineData("much too long", "much too long|", "much too long|")]
    public void Pad_Text_FillsTheColumns(string text, string right, string left)
    {
        Assert.Equal(right, TextColumns.PadRight(text, 6) + "|");
        Assert.Equal(left, TextColumns.PadLeft(text, 6) + "|");
    }

    [Fact]
    public void Truncate_AnyCleanText_FitsAndStartsLikeIt() =>
        Gen.Select(Gen.OneOf("a", "e\u0301", "物", "👩‍👩‍👧", " ", "🇫🇷").Array[0, 12], Gen.Int[0, 12]).Sample(
            (parts, width) =>
            {
                string text = string.Concat(parts);
                string cut = TextColumns.Truncate(text, width);
                return TextColumns.Width(cut) <= width && text.StartsWith(cut.TrimEnd('…'), StringComparison.Ordinal);
            },
            iter: 2_000);
}
