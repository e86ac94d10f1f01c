using System.Globalization;
using Wcwidth;

namespace Payday.Text;

/// <summary>Measures, pads and cuts text in terminal columns, where a wide character takes two and a combining mark none.</summary>
/// <remarks>
/// The unit is the grapheme cluster (what a reader calls one character), and no cluster is ever cut apart. Widths are those
/// of the Unicode data in the Wcwidth package. Clean the text first (<see cref="CleanText"/>): a control
/// character counts as no column here.
/// </remarks>
internal static class TextColumns
{
    /// <summary>How many columns the text takes, zero or more.</summary>
    public static int Width(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.AsSpan().ContainsAnyExceptInRange(' ', '~') ? Clusters(text).Sum(ClusterWidth) : text.Length;
    }

    /// <summary>The text followed by blanks up to a width in columns; longer text is left as it is.</summary>
    public static string PadRight(string text, int width) => text + Blanks(width - Width(text));

    /// <summary>The text after blanks up to a width in columns; longer text is left as it is.</summary>
    public static string PadLeft(string text, int width) => Blanks(width - Width(text)) + text;

    /// <summary>Two texts at both ends of a line, at least one blank apart.</summary>
    public static string Ends(string left, string right, int width) =>
        left + Blanks(Math.Max(1, width - Width(left) - Width(right))) + right;

    /// <summary>The text cut to a width in columns; text that was cut ends in the ellipsis.</summary>
    /// <param name="text">One line.</param>
    /// <param name="width">Columns, zero or more. In none, nothing fits.</param>
    /// <param name="ellipsis">One column wide.</param>
    /// <returns>At most <paramref name="width"/> columns; one less where a wide character did not fit any more.</returns>
    public static string Truncate(string text, int width, char ellipsis = '…')
    {
        ArgumentOutOfRangeException.ThrowIfNegative(width);
        if (Width(text) <= width)
        {
            return text;
        }

        return width == 0 ? "" : Start(text, width - 1) + ellipsis;
    }

    /// <summary>The clusters at the start of the text that fit a width in columns.</summary>
    internal static string Start(string text, int width)
    {
        int length = 0;
        int used = 0;
        foreach (string cluster in Clusters(text))
        {
            used += ClusterWidth(cluster);
            if (used > width)
            {
                break;
            }

            length += cluster.Length;
        }

        return text[..length];
    }

    /// <summary>The grapheme clusters of a text, in order; together they are the text.</summary>
    internal static IEnumerable<string> Clusters(string text)
    {
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            yield return elements.GetTextElement();
        }
    }

    // The package says -1 for a control character.
    internal static int ClusterWidth(string cluster) => Math.Max(0, UnicodeCalculator.GetWidth(cluster));

    private static string Blanks(int count) => new(' ', Math.Max(0, count));
}
