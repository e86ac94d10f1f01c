using System.Collections.Frozen;
using System.Text;

namespace Payday.Statements.Reading.Mt940;

/// <summary>Cuts a text into the fields of MT940 messages, with or without the envelope of the network around them.</summary>
internal static class Mt940Fields
{
    // Six lines of 65 are a field; some banks write more.
    private const int LongestField = 8192;

    // Only these begin a field: a line of text may begin with a colon too.
    private static readonly FrozenSet<string> Tags = FrozenSet.ToFrozenSet(
        ["20", "21", "25", "25P", "28", "28C", "60F", "60M", "61", "86", "62F", "62M", "64", "65", "13", "13D", "34F", "90C", "90D", "NS", "940"],
        StringComparer.Ordinal);

    /// <summary>The fields in order. What stands before the first is passed over.</summary>
    public static IEnumerable<Mt940Field> Of(string text)
    {
        string tag = "";
        var value = new StringBuilder();
        int begin = 0;
        int place = 0;
        foreach (string raw in text.Replace("@@", "\n", StringComparison.Ordinal).ReplaceLineEndings("\n").Split('\n'))
        {
            place++;
            string line = WithoutEnvelope(raw, out bool isEnvelope);
            bool isEnd = line is "-" || line.StartsWith("-}", StringComparison.Ordinal);
            string? next = TagOf(line);
            if (next is not null || isEnd || isEnvelope)
            {
                if (tag.Length > 0)
                {
                    yield return new Mt940Field(tag, value.ToString(), begin);
                }

                if (isEnd || isEnvelope)
                {
                    yield return new Mt940Field("", "", place);
                }

                value.Clear();
                tag = next ?? "";
                begin = place;
                value.Append(next is null ? "" : line[(next.Length + 2)..]);
            }
            else if (tag.Length > 0 && value.Length < LongestField)
            {
                value.Append('\n').Append(line);
            }
        }

        if (tag.Length > 0)
        {
            yield return new Mt940Field(tag, value.ToString(), begin);
        }
    }

    // {1:...}{2:...}{4: and on the same or the next line the first field.
    private static string WithoutEnvelope(string line, out bool isEnvelope)
    {
        isEnvelope = line.StartsWith('{');
        int body = isEnvelope ? line.IndexOf("{4:", StringComparison.Ordinal) : -1;
        return (body >= 0 ? line[(body + 3)..] : isEnvelope ? "" : line).TrimEnd();
    }

    private static string? TagOf(string line)
    {
        int end = line.StartsWith(':') ? line.AsSpan(1, Math.Min(line.Length - 1, 4)).IndexOf(':') : -1;
        return end > 0 && line[1..(end + 1)] is { } tag && Tags.Contains(tag) ? tag : null;
    }
}
