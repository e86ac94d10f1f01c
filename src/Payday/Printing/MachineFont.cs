using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.TrueType;
using UglyToad.PdfPig.Fonts.TrueType.Parser;
using UglyToad.PdfPig.Fonts.TrueType.Tables.CMapSubTables;

namespace Payday.Printing;

/// <summary>The outlines of some signs in a font file of the machine.</summary>
internal sealed class MachineFont
{
    private readonly Dictionary<char, (IReadOnlyList<PdfSubpath> Outline, double Advance)> signs = [];
    private readonly double unitsPerEm;

    private MachineFont(TrueTypeFont font, ICMapSubTable map, IEnumerable<char> wanted)
    {
        unitsPerEm = font.TableRegister.HeaderTable.UnitsPerEm;
        foreach (char sign in wanted)
        {
            int? Glyph(int code) => map.CharacterCodeToGlyphIndex(code);
            if (Glyph(sign) > 0
                && font.TryGetPath(sign, Glyph, out IReadOnlyList<PdfSubpath>? outline)
                && font.TryGetAdvanceWidth(sign, Glyph, out double advance)
                && outline.Count > 0 && advance > 0)
            {
                signs.Add(sign, (outline, advance));
            }
        }
    }

    /// <summary>How many signs are taken from it.</summary>
    public int Count => signs.Count;

    /// <summary>Reads a TrueType file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="wanted">The signs to take, as far as it has them.</param>
    /// <returns>The font; null where it has no signs by Unicode. The library throws much of what can be thrown where a file is damaged.</returns>
    public static MachineFont? Read(byte[] file, IEnumerable<char> wanted)
    {
        TrueTypeFont font = TrueTypeFontParser.Parse(new TrueTypeDataBytes(file));
        return font.WindowsUnicodeCMap is { } map ? new MachineFont(font, map, wanted) : null;
    }

    /// <summary>Whether a sign is taken from it.</summary>
    public bool Has(char sign) => signs.ContainsKey(sign);

    /// <summary>How wide a sign is, in ems.</summary>
    internal double Advance(char sign) => Em(signs[sign].Advance);

    /// <summary>A sign's outline, in the font's units.</summary>
    internal IReadOnlyList<PdfSubpath> Outline(char sign) => signs[sign].Outline;

    /// <summary>So many of the font's units in ems.</summary>
    internal double Em(double units) => units / unitsPerEm;
}
