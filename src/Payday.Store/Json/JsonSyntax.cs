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
            return JsonFault.Of(new FileFault.Nothing());
        }

        try
        {
            var walker = new JsonWalker(utf8);
            while (walker.Next())
            {
                if (walker.Depth >= JsonInput.MaxDepth && walker.Token is JsonTokenType.StartObject or JsonTokenType.StartArray)
                {
                    return JsonFault.Of(new FileFault.TooDeep(JsonInput.MaxDepth), line: walker.Line);
                }

                if (walker.Token is not (JsonTokenType.String or JsonTokenType.PropertyName))
                {
                    continue;
                }

                if (!walker.TryText(out bool isNew))
                {
                    return JsonFault.Of(new FileFault.HalfCharacter(), walker.Place, walker.Line);
                }

                if (!isNew)
                {
                    return JsonFault.Of(new FileFault.FieldTwice(), walker.Place, walker.Line);
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
        FileFault fault = rest.Length == bytesBefore ? new FileFault.EndsTooEarly() : new FileFault.Broken(rest[bytesBefore]);
        int column = Encoding.UTF8.GetString(rest[..bytesBefore]).EnumerateRunes().Count() + 1;
        return JsonFault.Of(fault, line: linesBefore + 1, column: column);
    }
}
