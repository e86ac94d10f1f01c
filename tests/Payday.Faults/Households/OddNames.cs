namespace Payday.Faults.Households;

/// <summary>Names that a household may give, at the edges of what a name is.</summary>
internal static class OddNames
{
    // Names in other scripts say "rent", "food for the cat", "milk" and the like; they are nobody's.
    private static readonly string[] Stems =
    [
        "Rent", "Food", "a", "Café ☕", "猫のえさ", "👩‍👧 club", "إيجار البيت", "חלב", "молоко", "a=b", "=1+1", "x=5=y", "\"Kids\" 'n' `more`",
        "one, two; three", "-minus", "--json", "@file", "#1", "100%", "%s {0}", "$(date)", "back\\slash", "e\u0301\u0302\u0303 marks", "no\u00A0break",
        "<b>&amp;", "ﷺ wide", "i̇stanbul", "ß and ſ", "🇳🇱🏳️‍🌈", "Wide 　 space", "buffer?", "stays!", "0.01", "2026-02-29", "Ǆ ǆ", "NULL",
    ];

    /// <summary>A name of at most 60 characters that no other of its list has.</summary>
    /// <param name="chance">Where chance comes from.</param>
    /// <param name="place">Its place in its list.</param>
    public static string Pick(Random chance, int place)
    {
        string stem = Stems[chance.Next(Stems.Length)];
        string name = $"{stem} {place}";
        return chance.Next(12) == 0 ? name + new string('W', 60 - name.Length) : name;
    }
}
