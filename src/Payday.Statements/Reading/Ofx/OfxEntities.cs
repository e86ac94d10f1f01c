using System.Globalization;
using System.Text;

namespace Payday.Statements.Reading.Ofx;

/// <summary>The escapes of OFX 1.6 (2.3) and of XML, and the few of HTML that banks write; any other stands for itself.</summary>
internal static class OfxEntities
{
    private const int LongestName = 8;

    /// <summary>The text with its escapes resolved, once: what comes out isn't looked at again.</summary>
    public static string Decode(ReadOnlySpan<char> text)
    {
        if (!text.Contains('&'))
        {
            return text.ToString();
        }

        var decoded = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            int end = text[i] == '&' ? text[i..Math.Min(text.Length, i + LongestName + 2)].IndexOf(';') : -1;
            if (end > 1 && Known(text[(i + 1)..(i + end)]) is { } resolved)
            {
                decoded.Append(resolved);
                i += end;
            }
            else
            {
                decoded.Append(text[i]);
            }
        }

        return decoded.ToString();
    }

    private static string? Known(ReadOnlySpan<char> name) => name switch
    {
        "lt" => "<",
        "gt" => ">",
        "amp" => "&",
        "quot" => "\"",
        "apos" => "'",
        "nbsp" => " ",
        _ when name[0] == '#' => Numbered(name[1..]),
        _ => null,
    };

    private static string? Numbered(ReadOnlySpan<char> number)
    {
        bool isHex = number.Length > 1 && number[0] is 'x' or 'X';
        bool ok = isHex
            ? int.TryParse(number[1..], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out int value)
            : int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out value);
        return ok && Rune.IsValid(value) ? new Rune(value).ToString() : null;
    }
}
