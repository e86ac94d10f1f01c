using CsCheck;
using Payday.Text;

namespace Payday.Tests.Text;

public class TextFoldTests
{
    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("Café, Żywność, Größe", "Cafe, Zywnosc, Grose")]
    [InlineData("Cafe\u0301", "Cafe")]
    [InlineData("cut…", "cut~")]
    [InlineData("a ─ b – c", "a - b - c")]
    [InlineData("買い物", "??????")]
    [InlineData("👩‍👩‍👧", "??")]
    [InlineData("£5", "?5")]
    public void ToAscii_Text_StaysReadable(string text, string expected) => Assert.Equal(expected, TextFold.ToAscii(text));

    [Fact]
    public void ToAscii_AnyCleanText_IsAsciiOfTheSameWidth() =>
        Gen.String[Gen.Char, 0, 40].Sample(
            text =>
            {
                string clean = CleanText.OneLine(text);
                string folded = TextFold.ToAscii(clean);
                return folded.All(char.IsAscii) && folded.Length == TextColumns.Width(clean);
            },
            iter: 2_000);
}
