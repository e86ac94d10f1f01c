using Payday.Core.Drafts;

namespace Payday.Core.Tests.Drafts;

public sealed class ItemIdTests
{
    [Theory]
    [InlineData("Food", "food")]
    [InlineData("  Odette, joinery ", "odette-joinery")]
    [InlineData("Week at the lake (2026)", "week-at-the-lake-2026")]
    [InlineData("!!!", "pot")]
    [InlineData("1234567890123456789012345678901234567890123456789 234567890", "1234567890123456789012345678901234567890123456789")]
    public void From_Name_IsPlainAndShort(string name, string expected)
    {
        string id = ItemId.From(name, "pot", []);

        Assert.Equal(expected, id);
        Assert.True(ItemId.IsValid(id));
    }

    [Fact]
    public void From_Taken_CountsOn() =>
        Assert.Equal("food-3", ItemId.From("Food", "pot", ["food", "food-2"]));

    [Theory]
    [InlineData("a")]
    [InlineData("a-1")]
    public void IsValid_LettersDigitsSingleHyphens_IsTrue(string id) => Assert.True(ItemId.IsValid(id));

    [Theory]
    [InlineData("")]
    [InlineData("-a")]
    [InlineData("a--b")]
    [InlineData("A")]
    [InlineData("é")]
    [InlineData("a b")]
    public void IsValid_AnythingElse_IsFalse(string id) => Assert.False(ItemId.IsValid(id));
}
