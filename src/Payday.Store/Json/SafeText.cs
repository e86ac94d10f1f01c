using System.Text;
using Payday.Core.Drafts;

namespace Payday.Store.Json;

/// <summary>Keeps text from a file harmless where it is shown: in a terminal, on a slip, in a sentence.</summary>
/// <remarks>Which characters are harmful is for <see cref="LineRule"/> to say.</remarks>
public static class SafeText
{
    private const int LongestShown = 40;

    /// <inheritdoc cref="LineRule.FirstHarmful"/>
    public static Rune? FirstHarmful(string text) => LineRule.FirstHarmful(text);

    /// <summary>The text with <c>?</c> for what is harmful, cut with an ellipsis after 40 characters.</summary>
    public static string Shown(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length <= LongestShown && FirstHarmful(text) is null)
        {
            return text;
        }

        var shown = new StringBuilder();
        int count = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (++count > LongestShown)
            {
                return shown.Append('…').ToString();
            }

            shown.Append(LineRule.IsHarmful(rune) ? "?" : rune.ToString());
        }

        return shown.ToString();
    }
}
