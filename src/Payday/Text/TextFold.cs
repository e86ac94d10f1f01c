using System.Text;

namespace Payday.Text;

/// <summary>Replaces what an output can't show, keeping every column where it was.</summary>
internal static class TextFold
{
    // Decomposition by the framework needs ICU, which the program does without; so the Latin letters stand here.
    private static readonly Dictionary<char, char> Plainer = Pairs(
        "AÀÁÂÃÄÅĀĂĄÆ", "aàáâãäåāăąæª", "CÇĆĈĊČ", "cçćĉċč", "DĎĐÐ", "dďđð", "EÈÉÊËĒĔĖĘĚ€", "eèéêëēĕėęě", "GĜĞĠĢ", "gĝğġģ",
        "HĤĦ", "hĥħ", "IÌÍÎÏĨĪĬĮİ", "iìíîïĩīĭįı", "JĴ", "jĵ", "KĶ", "kķĸ", "LĹĻĽĿŁ", "lĺļľŀł", "NÑŃŅŇŊ", "nñńņňŉŋ",
        "OÒÓÔÕÖØŌŎŐŒ", "oòóôõöøōŏőœº", "RŔŖŘ", "rŕŗř", "SŚŜŞŠȘ", "sśŝşšșßſ", "TŢŤŦȚÞ", "tţťŧțþ", "UÙÚÛÜŨŪŬŮŰŲ", "uùúûüũūŭůűų",
        "WŴ", "wŵ", "YÝŶŸ", "yýÿŷ", "ZŹŻŽ", "zźżž", "~…", "-─–—−‐‑", "#█▉▊▋▌", "|│", "=═", "'‘’′", "\"“”«»", " \u00A0\u2007\u202F", "*•", ".·▍▎▏", "x×", "v✓");

    /// <summary>The text in ASCII.</summary>
    /// <inheritdoc cref="To"/>
    public static string ToAscii(string text) => To(text, char.IsAscii);

    /// <summary>The text in characters that the output can show.</summary>
    /// <param name="text">One line of clean text.</param>
    /// <param name="canShow">Whether the output shows a character; it shows ASCII.</param>
    /// <returns>
    /// As wide as the text. A letter that can't be shown becomes its plain Latin letter, an ellipsis
    /// <c>~</c>, a rule <c>-</c>; anything else becomes as many <c>?</c> as it has columns.
    /// </returns>
    public static string To(string text, Func<char, bool> canShow)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(canShow);
        if (text.All(canShow))
        {
            return text;
        }

        var folded = new StringBuilder(text.Length);
        foreach (string cluster in TextColumns.Clusters(text))
        {
            folded.Append(cluster.All(canShow) ? cluster : Instead(cluster, canShow));
        }

        return folded.ToString();
    }

    // A letter with marks of its own falls back to the letter.
    private static string Instead(string cluster, Func<char, bool> canShow)
    {
        int width = TextColumns.ClusterWidth(cluster);
        char first = cluster[0];
        if (width == 1 && canShow(first))
        {
            return first.ToString();
        }

        if (width == 1 && first is >= BraillePattern.First and <= BraillePattern.Last)
        {
            return BraillePattern.ToAscii(first).ToString();
        }

        return width == 1 && Plainer.TryGetValue(first, out char plain) ? plain.ToString() : new string('?', width);
    }

    private static Dictionary<char, char> Pairs(params ReadOnlySpan<string> groups)
    {
        var pairs = new Dictionary<char, char>();
        foreach (string group in groups)
        {
            foreach (char special in group.AsSpan(1))
            {
                pairs.Add(special, group[0]);
            }
        }

        return pairs;
    }
}
