using System.Text;
using System.Text.Json;

namespace Payday.Store.Json;

/// <summary>Finds where a text stops being strict JSON.</summary>
internal static class JsonSyntax
{
    /// <summary>The first fault, or null for a sound text.</summary>
    public static JsonFault? FirstFault(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
        {
            return new JsonFault("", "There is nothing in the text.");
        }

        try
        {
            var walker = new JsonWalker(utf8);
            while (walker.Next())
            {
                if (walker.Depth >= JsonInput.MaxDepth && walker.Token is JsonTokenType.StartObject or JsonTokenType.StartArray)
                {
                    return new JsonFault("", $"This is nested deeper than {JsonInput.MaxDepth} levels; nothing here needs that.", walker.Line);
                }

                if (walker.Token is not (JsonTokenType.String or JsonTokenType.PropertyName))
                {
                    continue;
                }

                if (!walker.TryText(out bool isNew))
                {
                    return new JsonFault(walker.Place, "A \\u escape here spells half a character; write the character itself.", walker.Line);
                }

                if (!isNew)
                {
                    return new JsonFault(walker.Place, "This field stands here twice; keep one of them.", walker.Line);
                }
            }

            return null;
        }
        catch (JsonException broken)
        {
            return Broken(utf8, (int)(broken.LineNumber ?? 0), (int)(broken.BytePositionInLine ?? 0));
        }
    }

    private static JsonFault Broken(ReadOnlySpan<byte> utf8, int linesBefore, int bytesBefore)
    {
        ReadOnlySpan<byte> rest = utf8;
        for (int i = 0; i < linesBefore; i++)
        {
            rest = rest[(rest.IndexOf((byte)'\n') + 1)..];
        }

        bytesBefore = Math.Min(bytesBefore, rest.Length);
        string sentence = rest.Length == bytesBefore
            ? "The text ends too early; a bracket or a quote is not closed."
            : rest[bytesBefore] switch
            {
                (byte)'/' => "JSON has no comments; take this one out.",
                (byte)'}' or (byte)']' => "There is a comma too many before this bracket, or it closes one of the other kind.",
                (byte)'\'' => "JSON has double quotes only; write \" here.",
                _ => "The JSON is broken here; look just before for a missing comma, quote or bracket.",
            };
        int column = Encoding.UTF8.GetString(rest[..bytesBefore]).EnumerateRunes().Count() + 1;
        return new JsonFault("", sentence, linesBefore + 1, column);
    }
}
