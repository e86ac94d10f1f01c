using Payday.Text;

namespace Payday.Tests.Text;

public class WordListTests
{
    [Theory]
    [InlineData("Food", "Food")]
    [InlineData("Food and Fares", "Food", "Fares")]
    [InlineData("Food, Fares and Fuel", "Food", "Fares", "Fuel")]
    public void InWords_SomeThings_AreJoinedByAWord(string words, params string[] parts) => Assert.Equal(words, parts.InWords());
}
