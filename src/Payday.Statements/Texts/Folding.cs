namespace Payday.Statements.Texts;

/// <summary>Letters without marks and without case, so that texts of one bank in two formats compare as equal.</summary>
/// <remarks>
/// A table, as the program runs without the machine's Unicode data: Latin-1 Supplement and Latin Extended-A by their canonical
/// decomposition (Unicode Standard), the letters that have none (ß, æ, ø, ł and so on) by their first letter.
/// </remarks>
internal static class Folding
{
    private const char First = '\u00C0';

    private const string Letters =
        "AAAAAAACEEEEIIIIDNOOOOO OUUUUYTSAAAAAAACEEEEIIIIDNOOOOO OUUUUYTY"
        + "AAAAAACCCCCCCCDDDDEEEEEEEEEEGGGGGGGGHHHHIIIIIIIIIIIIJJKKKLLLLLLL"
        + "LLLNNNNNNNNNOOOOOOOORRRRRRSSSSSSSSTTTTTTUUUUUUUUUUUUWWYYYZZZZZZS";

    /// <summary>The letter in upper case without its marks; any other character in upper case.</summary>
    public static char Fold(char c)
    {
        if (char.IsAscii(c))
        {
            return char.ToUpperInvariant(c);
        }

        int at = c - First;
        return at >= 0 && at < Letters.Length && Letters[at] != ' ' ? Letters[at] : char.ToUpperInvariant(c);
    }

    /// <summary>A text folded letter by letter; as long as it was.</summary>
    public static string Fold(string text) => string.Create(text.Length, text, static (chars, source) =>
    {
        for (int i = 0; i < source.Length; i++)
        {
            chars[i] = Fold(source[i]);
        }
    });
}
