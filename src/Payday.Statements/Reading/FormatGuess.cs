using System.Text.RegularExpressions;

namespace Payday.Statements.Reading;

/// <summary>Finds a text's format by what stands in it.</summary>
internal static partial class FormatGuess
{
    // The Finnish example of MT940 has a page of words before its first tag; OFX headers come with comments and empty lines.
    private const int Beginning = 64 * 1024;

    /// <summary>The format of a text; CSV where it is none of the others.</summary>
    public static TextFormat Of(string text)
    {
        string start = text[..Math.Min(text.Length, Beginning)];
        string trimmed = start.TrimStart();
        if (OfxRoot().IsMatch(start))
        {
            return TextFormat.Ofx;
        }

        if (trimmed.StartsWith('<'))
        {
            return CamtRoot().IsMatch(start) ? TextFormat.Camt : TextFormat.OtherXml;
        }

        return Mt940Start().IsMatch(start) ? TextFormat.Mt940 : TextFormat.Csv;
    }

    [GeneratedRegex(@"<OFX\s*>", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex OfxRoot();

    [GeneratedRegex(@"<([A-Za-z0-9_.-]+:)?(BkToCstmrStmt|BkToCstmrAcctRpt)\b", RegexOptions.CultureInvariant)]
    private static partial Regex CamtRoot();

    [GeneratedRegex(@"(^|[\r\n@])(:20:|:25:|:28C?:|:60[FM]:)", RegexOptions.CultureInvariant)]
    private static partial Regex Mt940Start();
}
