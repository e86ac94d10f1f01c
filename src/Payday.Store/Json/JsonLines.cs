using System.Text.Json;

namespace Payday.Store.Json;

/// <summary>Finds the lines on which places of a sound JSON text stand.</summary>
internal static class JsonLines
{
    /// <summary>The line, from 1, of each wanted place that is in the text.</summary>
    public static Dictionary<string, int> Of(ReadOnlySpan<byte> utf8, HashSet<string> wanted)
    {
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        var walker = new JsonWalker(utf8);
        while (lines.Count < wanted.Count && walker.Next())
        {
            if (walker.Token is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                continue;
            }

            if (walker.Token == JsonTokenType.PropertyName)
            {
                walker.TryText(out _);
            }

            string place = walker.Place;
            if (wanted.Contains(place))
            {
                // The first token of a place is the name of its field: that is the line a person looks for.
                lines.TryAdd(place, walker.Line);
            }
        }

        return lines;
    }
}
