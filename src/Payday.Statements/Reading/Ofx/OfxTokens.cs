using System.Text;

namespace Payday.Statements.Reading.Ofx;

/// <summary>Cuts an OFX text, SGML or XML, into tags and values.</summary>
/// <remarks>
/// OFX 1.6 (DTD): values need no end tag, groups do. In the wild 2.x has unclosed values too, so one reader needs no end tags
/// for both. A value goes on to the next tag. What isn't a tag, such as a lone less-than sign or a line break of HTML, is text.
/// </remarks>
internal static class OfxTokens
{
    private const string CData = "<![CDATA[";
    private const int LongestName = 40;

    /// <summary>The pieces from a place on, in order. Comments and instructions are passed over.</summary>
    public static IEnumerable<OfxToken> Of(string text, int start)
    {
        var value = new StringBuilder();
        OfxToken? open = null;
        int at = start;
        while (at < text.Length)
        {
            int next = text.IndexOf('<', at);
            int end = next < 0 ? text.Length : next;
            Append(value, open is not null, text.AsSpan(at, end - at), OfxEntities.Decode);
            if (next < 0)
            {
                break;
            }

            if (Skipped(text, next) is { } behind)
            {
                at = behind;
            }
            else if (text.AsSpan(next).StartsWith(CData, StringComparison.Ordinal))
            {
                int close = text.IndexOf("]]>", next, StringComparison.Ordinal);
                int stop = close < 0 ? text.Length : close;
                Append(value, open is not null, text.AsSpan(next + CData.Length, stop - next - CData.Length), plain => plain.ToString());
                at = close < 0 ? text.Length : close + 3;
            }
            else if (TagAt(text, next) is { } tag)
            {
                if (tag.IsBreak)
                {
                    Append(value, open is not null, " ", plain => plain.ToString());
                }
                else
                {
                    if (open is { } before)
                    {
                        yield return before with { Value = value.ToString().Trim() };
                    }

                    value.Clear();
                    open = tag.IsClose || tag.IsEmpty ? null : new OfxToken(OfxTokenKind.Open, tag.Name, "", next);
                    if (tag.IsClose)
                    {
                        yield return new OfxToken(OfxTokenKind.Close, tag.Name, "", next);
                    }
                }

                at = tag.End;
            }
            else
            {
                Append(value, open is not null, "<", plain => plain.ToString());
                at = next + 1;
            }
        }

        if (open is { } last)
        {
            yield return last with { Value = value.ToString().Trim() };
        }
    }

    private delegate string Decoder(ReadOnlySpan<char> text);

    // No value needs more, and a damaged file must not copy itself over and over.
    private static void Append(StringBuilder value, bool isWanted, ReadOnlySpan<char> text, Decoder decode)
    {
        const int longest = 4096;
        if (isWanted && value.Length < longest)
        {
            value.Append(decode(text[..Math.Min(text.Length, longest)]));
        }
    }

    private static int? Skipped(string text, int at)
    {
        ReadOnlySpan<char> rest = text.AsSpan(at);
        (string mark, string end) = rest.StartsWith("<!--", StringComparison.Ordinal) ? ("<!--", "-->")
            : rest.StartsWith("<?", StringComparison.Ordinal) ? ("<?", "?>")
            : ("", "");
        if (mark.Length == 0)
        {
            return null;
        }

        int close = text.IndexOf(end, at + mark.Length, StringComparison.Ordinal);
        return close < 0 ? text.Length : close + end.Length;
    }

    private static OfxTag? TagAt(string text, int at)
    {
        int name = at + 1;
        bool isClose = name < text.Length && text[name] == '/';
        name += isClose ? 1 : 0;
        int end = name;
        while (end < text.Length && end - name <= LongestName && (char.IsAsciiLetterOrDigit(text[end]) || text[end] is '.' or '_' or '-' or ':'))
        {
            end++;
        }

        if (end == name || end - name > LongestName || !char.IsAsciiLetter(text[name]))
        {
            return null;
        }

        // Attributes aren't in the format; blanks and the slash of an empty tag are.
        int close = end;
        while (close < text.Length && (char.IsWhiteSpace(text[close]) || text[close] == '/'))
        {
            close++;
        }

        if (close >= text.Length || text[close] != '>')
        {
            return null;
        }

        bool isEmpty = text.AsSpan(end, close - end).Contains('/');
        return new OfxTag(text[name..end].ToUpperInvariant(), isClose, isEmpty, close + 1);
    }

    private readonly record struct OfxTag(string Name, bool IsClose, bool IsEmpty, int End)
    {
        public bool IsBreak => Name == "BR";
    }
}
