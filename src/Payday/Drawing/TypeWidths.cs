using System.Collections.Frozen;
using Payday.Text;
using UglyToad.PdfPig.Fonts;
using UglyToad.PdfPig.Fonts.AdobeFontMetrics;
using UglyToad.PdfPig.Fonts.Standard14Fonts;

namespace Payday.Drawing;

/// <summary>How wide words are in Helvetica, one of the 14 fonts that every PDF reader brings (Adobe font metrics).</summary>
/// <remarks>All its digits have one width, so amounts that end at one line stand digit under digit.</remarks>
internal static class TypeWidths
{
    // The room of a sign that Helvetica lacks, in ems a column: that of the question mark which may stand there, and of a letter of a wide
    // script, which takes two.
    private const double OfForeignColumn = 0.557;
    private const double OfBoldForeignColumn = 0.612;

    private const double ThousandthsOfEm = 1000;
    private const string Ellipsis = "\u2026";

    private static readonly FrozenDictionary<char, double> Regular = Of(Standard14Font.Helvetica);
    private static readonly FrozenDictionary<char, double> Bold = Of(Standard14Font.HelveticaBold);

    /// <summary>Whether Helvetica has a sign.</summary>
    public static bool Has(char sign) => Regular.ContainsKey(sign);

    /// <summary>How wide clean words are, in points.</summary>
    public static double Of(string words, double size, bool isBold = false)
    {
        double ems = 0;
        foreach (string sign in TextColumns.Clusters(words))
        {
            ems += OfSign(sign, isBold);
        }

        return ems * size;
    }

    /// <summary>The advance of a sign, in ems.</summary>
    public static double OfSign(string sign, bool isBold)
    {
        // What Helvetica lacks may become plain letters, or signs of another font: in room that both fit.
        FrozenDictionary<char, double> widths = isBold ? Bold : Regular;
        return sign.Length == 1 && widths.TryGetValue(sign[0], out double width) ? width : (isBold ? OfBoldForeignColumn : OfForeignColumn) * TextColumns.ClusterWidth(sign);
    }

    /// <summary>The words, cut where they are too wide so that an ellipsis is seen.</summary>
    public static string Cut(string words, double width, double size, bool isBold = false)
    {
        if (Of(words, size, isBold) <= width)
        {
            return words;
        }

        double left = (width / size) - OfSign(Ellipsis, isBold);
        int end = 0;
        foreach (string sign in TextColumns.Clusters(words))
        {
            left -= OfSign(sign, isBold);
            if (left < 0)
            {
                break;
            }

            end += sign.Length;
        }

        return words[..end].TrimEnd() + Ellipsis;
    }

    /// <summary>The words in lines no wider than some room; a word alone that is wider is cut.</summary>
    public static IEnumerable<string> Wrap(string words, double width, double size, bool isBold = false)
    {
        string line = "";
        foreach (string word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Of(longer, size, isBold) > width)
            {
                yield return line;
                longer = word;
            }

            line = Cut(longer, width, size, isBold);
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }

    private static FrozenDictionary<char, double> Of(Standard14Font font)
    {
        var widths = new Dictionary<char, double>();
        foreach ((string name, AdobeFontMetricsIndividualCharacterMetric sign) in Standard14.GetAdobeFontMetrics(font).CharacterMetrics)
        {
            if (GlyphList.AdobeGlyphList.NameToUnicode(name) is { Length: 1 } letter)
            {
                widths.TryAdd(letter[0], sign.Width.X / ThousandthsOfEm);
            }
        }

        return widths.ToFrozenDictionary();
    }
}
