using CsCheck;
using Payday.Text;

namespace Payday.Tests.Text;

public class TextWrapTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("  ", "")]
    [InlineData("one two  three", "one two|three")]
    [InlineData("abcdefghij", "abcdefg|hij")]
    [InlineData("a abcdefghij b", "a|abcdefg|hij b")]
    [InlineData("買い物買い物", "買い物|買い物")]
    public void Lines_InSevenColumns_BreakAtBlanks(string text, string expected) =>
        Assert.Equal(expected, string.Join('|', TextWrap.Lines(text, 7)));

    [Fact]
    public void Lines_AnyText_FitAndLoseNothing() =>
        Gen.Select(Gen.OneOf("a", "bc", " ", "物", "e\u0301").Array[0, 20], Gen.Int[2, 9]).Sample(
            (parts, width) =>
            {
                string text = string.Concat(parts);
                var lines = TextWrap.Lines(text, width);
                return lines.All(line => TextColumns.Width(line) <= width)
                    && string.Concat(lines).Replace(" ", "", StringComparison.Ordinal) == text.Replace(" ", "", StringComparison.Ordinal);
            },
            iter: 2_000);
}
