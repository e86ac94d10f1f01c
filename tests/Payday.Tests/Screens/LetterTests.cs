using Payday.Screens.Shell;

namespace Payday.Tests.Screens;

/// <summary>One key, one meaning: letters of all screens come from one table.</summary>
[Collection(OneTerminal.Name)]
public class LetterTests
{
    [Fact]
    public void Letters_OfTheTable_AreEachThereOnce()
    {
        Assert.Distinct(Letters.All.Select(letter => letter.Character));
        Assert.Distinct(Letters.All.Select(letter => letter.Meaning));
    }

    [Fact]
    public void Bindings_OfAllScreens_TakeTheirLettersFromTheTable() => Assert.All(AllKeys.OfAllScreens(), key =>
    {
        bool isCharacter = key.Binding.Key.AsRune.Value > ' ' && !key.Binding.Key.IsCtrl && !key.Binding.Key.IsAlt;
        Assert.True(
            isCharacter ? key.Binding.Letter is { } letter && letter.Character == key.Binding.Key.AsRune.Value && Letters.All.Contains(letter) : key.Binding.Letter is null,
            $"{key.Binding.Name} on {key.Screen} is not from the table");
    });

    // What a letter does is the same thing on every screen: a new use of one is looked at here.
    [Fact]
    public void Letters_OnAllScreens_DoWhatIsListed()
    {
        string[] uses = [.. AllKeys.OfAllScreens()
            .Where(key => key.Binding.Letter is not null)
            .GroupBy(key => key.Binding.Letter!)
            .OrderBy(keys => keys.Key.Character)
            .SelectMany(keys => keys
                .GroupBy(key => key.Binding.Help, key => key.Screen)
                .Select(use => $"    {use.Key} ({string.Join(", ", use.Distinct())})")
                .Prepend($"{keys.Key.Character}  {keys.Key.Meaning}"))];
        Slips.Golden.Equal("letters", uses);
    }

    // Esc takes nothing and writes nothing, on any screen: it goes back, or asks.
    [Fact]
    public void Esc_OnAllScreens_OnlyGoesBackOrAsks() => Assert.All(
        AllKeys.OfAllScreens().Where(key => key.Binding.Name == "Esc"),
        key => Assert.Matches("^(One level back; nothing is lost|Back; |Home; everything is kept|Leave Payday, after a question|Leave the demo household, after a question|Go on)", key.Binding.Help));
}
