using CsCheck;
using Payday.Text;

namespace Payday.Tests.Text;

public class CleanTextTests
{
    [Theory]
    [InlineData(null, "")]
    [InlineData("", "")]
    [InlineData("Groceries", "Groceries")]
    [InlineData("Food\u001b[31m", "Food?[31m")]
    [InlineData("a\u0000b\u007fc\u009bd", "a?b?c?d")]
    [InlineData("one\ntwo\r\nthree\tfour\u2028five\u2029six\u0085seven", "one two three four five six seven")]
    [InlineData("pay\u202Eroll\u2066x\u2069\u200F", "payrollx")]
    [InlineData("a\u200Bb\uFEFFc\u2060d\u00ADe", "abcde")]
    [InlineData("Cafe\u0301 日本 👩‍👩‍👧", "Cafe\u0301 日本 👩‍👩‍👧")]
    public void OneLine_TextFromOutside_HoldsNothingToObey(string? text, string expected) =>
        Assert.Equal(expected, CleanText.OneLine(text));

    // Not among the cases above, as attributes can't hold half a surrogate pair.
    [Fact]
    public void OneLine_NoCharacters_BecomeQuestionMarks()
    {
        Assert.Equal("half ? here", CleanText.OneLine("half \uD83D here"));
        Assert.Equal("??", CleanText.OneLine("\uFFFE\uFDD0"));
    }

    [Fact]
    public void OneLine_AnyText_HasNoControlsAndStaysWhenCleanedAgain() =>
        Gen.String[Gen.Char, 0, 40].Sample(
            text =>
            {
                string clean = CleanText.OneLine(text);
                return !clean.Any(c => char.IsControl(c) || c is '\u2028' or '\u2029' or '\u202E') && CleanText.OneLine(clean) == clean;
            },
            iter: 2_000);
}
