using System.Drawing;
using Payday.Screens.Shell;
using Payday.Texts;

namespace Payday.Tests.Screens;

/// <summary><c>?</c> explains every word of its screen that isn't everyday English, on forms too.</summary>
[Collection(OneTerminal.Name)]
public class HelpWordTests
{
    // Words that people asked about, or would.
    private static readonly string[] Asked =
    [
        "set aside", "not in notes", "to pay back", "left to place", "buffer", "loose notes", "wallet", "minimum", "surplus", "overdraft", "fill day", "sinking",
        "ladder", "reserve", "top note", "small money", "ledger line", "ledger", "proposed", "withdrawal", "slip", "filling sheet", "cash return", "card purchase",
        "difference", "on its way", "extra payday", "when due", "outlook",
    ];

    [Fact]
    public void Help_OfAllScreens_ExplainsTheWordsThatStandThere()
    {
        HelpScreen[] pages = [.. AllKeys.OfAllScreens().Where(key => key.Binding.Name == "?").Select(key => key.Binding.Do()).OfType<Way.To>().Select(way => way.Screen).OfType<HelpScreen>()];
        Assert.True(pages.Length > 30, $"{pages.Length} help pages");
        int explained = 0;
        foreach (HelpScreen page in pages)
        {
            string shown = Text(page.About, 24, " ");
            string[] heads = [.. Text(page, 500, "\n").Split('\n').Where(line => line.Contains(':', StringComparison.Ordinal)).Select(line => line[..line.IndexOf(':', StringComparison.Ordinal)])];
            foreach (string word in Asked.Where(word => Word(word).IsIn(shown)))
            {
                Assert.True(heads.Any(Word(word).IsIn), $"? of {page.About.Title} says nothing of: {word}");
                explained++;
            }
        }

        Assert.True(explained > 100, $"{explained} words");
    }

    // What a screen's own keys do is found before those that are the same on every screen, and each key once.
    [Fact]
    public void Help_OfAllScreens_HasTheKeysOfTheScreenFirst()
    {
        foreach (HelpScreen page in AllKeys.OfAllScreens().Where(key => key.Binding.Name == "?").Select(key => key.Binding.Do()).OfType<Way.To>().Select(way => way.Screen).OfType<HelpScreen>())
        {
            string[] lines = Text(page, 500, "\n").Split('\n');
            int here = Line("This screen"), moving = Line("Moving"), everywhere = Line("Everywhere");
            Assert.True(everywhere > 0 && here < everywhere && moving < everywhere && (here < 0 || moving < 0 || here < moving), page.Title);
            Assert.True(Key("Esc") < 0 || Key("Esc") > everywhere, page.Title);
            Assert.True(Key("Down") < 0 || (Key("Down") > moving && Key("Down") < everywhere), page.Title);
            Assert.All(page.About.Bindings, key => Assert.Single(lines, line => line.TrimStart().StartsWith(key.Name + " ", StringComparison.Ordinal) && line.Contains(key.Help.Split(' ')[0], StringComparison.Ordinal)));

            int Line(string heading) => Array.FindIndex(lines, line => line.Contains($" {heading} ", StringComparison.Ordinal) && line.Contains('\u2500'));
            int Key(string name) => Array.FindIndex(lines, line => line.TrimStart().StartsWith(name + "  ", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Words_OfTheTable_AreEachThereOnceAndEndAsSentences()
    {
        Assert.Distinct(WordTexts.All.Select(word => word.Word));
        Assert.Distinct(WordTexts.All.SelectMany(word => word.Forms));
        Assert.All(WordTexts.All, word => Assert.EndsWith(".", word.Meaning, StringComparison.Ordinal));
        Assert.All(WordTexts.All, word => Assert.All(word.Forms, form => Assert.Equal(form.ToLowerInvariant(), form)));
    }

    [Theory]
    [InlineData("1.40 not in notes.", true)]
    [InlineData("Not in notes", true)]
    [InlineData("not in notesx", false)]
    [InlineData("knot in notes", false)]
    public void IsIn_AWordOfItsOwn_IsFound(string text, bool isThere) => Assert.Equal(isThere, Word("not in notes").IsIn(text));

    private static PlainWord Word(string word) => new(word, "", word, word + "s");

    private static string Text(Screen screen, int height, string between) =>
        string.Join(between, screen.Draw(new Size(80, height)).Lines.Select(line => line.Text.Trim()));
}
