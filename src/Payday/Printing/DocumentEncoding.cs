using System.Collections.Frozen;
using System.Text;
using Payday.Text;
using UglyToad.PdfPig.Fonts;
using UglyToad.PdfPig.Fonts.Standard14Fonts;

namespace Payday.Printing;

/// <summary>The codes of one document's characters: ASCII as it is, and 128 codes for others that the fonts of every PDF reader have.</summary>
/// <remarks>
/// Courier and Helvetica, of the 14 fonts that every PDF reader brings, have the letters of the Latin languages of Europe,
/// the same ones, but a PDF's ready-made encodings reach only some of them. So each document names the glyphs it uses
/// (ISO 32000-1, 9.6.6: <c>Differences</c>).
/// </remarks>
internal sealed class DocumentEncoding
{
    private const int FirstFreeCode = 128;

    private static readonly FrozenDictionary<char, string> Glyphs = GlyphNames();

    private readonly Dictionary<char, byte> codes = [];
    private readonly StringBuilder differences = new();

    /// <summary>An encoding for all characters of some lines, as far as those fonts have them and the codes suffice.</summary>
    public DocumentEncoding(IEnumerable<string> lines)
    {
        foreach (char letter in lines.SelectMany(line => line).Where(c => !char.IsAscii(c)).Distinct())
        {
            if (FirstFreeCode + codes.Count <= byte.MaxValue && Glyphs.TryGetValue(letter, out string? name))
            {
                codes.Add(letter, (byte)(FirstFreeCode + codes.Count));
                differences.Append(" /").Append(name);
            }
        }
    }

    /// <summary>The encoding as a PDF object.</summary>
    public string PdfObject =>
        $"<< /Type /Encoding /BaseEncoding /WinAnsiEncoding /Differences [ {FirstFreeCode}{differences} ] >>";

    /// <summary>Whether a character has a code.</summary>
    public bool Has(char letter) => char.IsAscii(letter) || codes.ContainsKey(letter);

    /// <summary>The codes of a line, one for each column; characters without a code are replaced visibly (see <see cref="TextFold"/>).</summary>
    public byte[] Encode(string line) =>
        [.. TextFold.To(line, Has).Select(c => char.IsAscii(c) ? (byte)c : codes[c])];

    private static FrozenDictionary<char, string> GlyphNames()
    {
        var names = new Dictionary<char, string>();
        foreach (string name in Standard14.GetAdobeFontMetrics(Standard14Font.Courier).CharacterMetrics.Keys)
        {
            if (GlyphList.AdobeGlyphList.NameToUnicode(name) is { Length: 1 } letter)
            {
                names.TryAdd(letter[0], name);
            }
        }

        return names.ToFrozenDictionary();
    }
}
