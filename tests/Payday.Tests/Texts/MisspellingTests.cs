using CsCheck;
using Payday.Texts;

namespace Payday.Tests.Texts;

public class MisspellingTests
{
    private static readonly string[] Known = ["run", "slip", "show", "spend", "statement", "status", "return", "restore", "Car loan", "Food"];

    [Theory]
    [InlineData("rnu", "run")] // swapped
    [InlineData("sow", "show")] // left out
    [InlineData("sslip", "slip")] // put in
    [InlineData("fodo", "Food")] // swapped, another case
    [InlineData("statemnet", "statement")]
    [InlineData("sta", "statement|status")] // both begin so
    [InlineData("car laon", "Car loan")]
    [InlineData("ru", "run")]
    [InlineData("xylophone", "")]
    [InlineData("", "")]
    public void Near_OfAWord_OffersWhatMayBeMeant(string written, string offered) =>
        Assert.Equal(offered, string.Join('|', Misspelling.Near(written, Known)));

    [Fact]
    public void Near_OneSlip_IsOffered() =>
        Gen.Select(Gen.OneOf("statement", "restore", "calendar", "reconcile"), Gen.Int[0, 8], Gen.Char['a', 'z']).Sample((word, at, letter) =>
        {
            int place = Math.Min(at, word.Length - 1);

            Assert.Contains(word, Misspelling.Near(word.Remove(place, 1), [word]));
            Assert.Contains(word, Misspelling.Near(word.Insert(place, letter.ToString()), [word]));
        });
}
