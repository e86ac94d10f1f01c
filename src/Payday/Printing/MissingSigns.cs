using System.Collections.Immutable;
using Payday.Text;

namespace Payday.Printing;

/// <summary>The signs that the fonts of every PDF reader lack, and those that no font here has either.</summary>
internal static class MissingSigns
{
    private const int MostSigns = 12;

    /// <summary>What the fonts of PDF readers have no sign for, though plain letters may do in its place.</summary>
    public static ImmutableArray<char> Foreign(IEnumerable<string> lines, DocumentEncoding encoding) =>
        [.. lines.SelectMany(TextColumns.Clusters).Where(sign => sign.Length == 1 && !encoding.Has(sign[0])).Select(sign => sign[0]).Distinct()];

    /// <summary>Which signs a PDF can't have here, in a sentence; null where it has all.</summary>
    /// <param name="lines">Clean lines.</param>
    /// <param name="fonts">The fonts of the machine, or null for none.</param>
    public static string? Said(ImmutableArray<string> lines, MachineFonts? fonts)
    {
        var encoding = new DocumentEncoding(lines);
        MachineFont? other = fonts?.For(Foreign(lines, encoding));
        string[] signs =
        [
            .. lines.SelectMany(TextColumns.Clusters).Distinct()
                .Where(sign => !(sign.Length == 1 && other?.Has(sign[0]) == true) && TextFold.To(sign, encoding.Has).Contains('?', StringComparison.Ordinal) && sign != "?"),
        ];
        return signs.Length == 0 ? null
            : $"No font of this machine has {string.Concat(signs.Take(MostSigns))}{(signs.Length > MostSigns ? "..." : "")} in a way a PDF can take: ? stands there. Print it without a PDF, or write such names in Latin letters.";
    }
}
