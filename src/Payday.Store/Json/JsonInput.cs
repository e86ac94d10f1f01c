using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Payday.Store.Json;

/// <summary>Reads a JSON text with a <see cref="JsonCursor"/> and reports all that is wrong with it.</summary>
/// <remarks>
/// Strict JSON: no comments, no commas too many, no field twice, at most <see cref="MaxDepth"/> levels
/// and <see cref="MaxBytes"/> bytes of UTF-8. A byte order mark at the front is allowed.
/// </remarks>
public static class JsonInput
{
    /// <summary>The most bytes that are read, 50 MB.</summary>
    public const int MaxBytes = 50_000_000;

    /// <summary>How deep objects and lists may be nested.</summary>
    public const int MaxDepth = 32;

    // A field that stands twice was met by JsonSyntax. The library's own look at that would ask OpenSSL for a random
    // number, and end the program where that library is missing.
    private static readonly JsonDocumentOptions Strict = new()
    {
        AllowTrailingCommas = false,
        CommentHandling = JsonCommentHandling.Disallow,
        MaxDepth = MaxDepth,
    };

    /// <summary>Reads a text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="read">
    /// Turns the outermost value into the result. It reports faults to the cursor rather than throwing, and
    /// may return null once it has reported one.
    /// </param>
    public static JsonReading<T> Read<T>(string json, Func<JsonCursor, T?> read)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(json);
        if (json.Length > MaxBytes)
        {
            return Refused<T>(JsonFault.Of(new FileFault.TooLarge()));
        }

        // A lone surrogate becomes the replacement character, as when a file is read as text.
        return Read(Encoding.UTF8.GetBytes(json).AsMemory(), read);
    }

    /// <summary>Reads a text of UTF-8 bytes.</summary>
    /// <inheritdoc cref="Read{T}(string, Func{JsonCursor, T})"/>
    public static JsonReading<T> Read<T>(ReadOnlyMemory<byte> utf8, Func<JsonCursor, T?> read)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(read);
        if (utf8.Length > MaxBytes)
        {
            return Refused<T>(JsonFault.Of(new FileFault.TooLarge()));
        }

        if (!Utf8.IsValid(utf8.Span))
        {
            return Refused<T>(JsonFault.Of(new FileFault.NotUtf8()));
        }

        if (utf8.Span.StartsWith(Encoding.UTF8.Preamble))
        {
            utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        }

        if (JsonSyntax.FirstFault(utf8.Span) is { } broken)
        {
            return Refused<T>(broken);
        }

        using JsonDocument document = JsonDocument.Parse(utf8, Strict);
        var log = new JsonFaultLog();
        T? value = read(JsonCursor.Root(document.RootElement, log));
        if (!log.IsEmpty)
        {
            return new JsonReading<T>(null, log.Located(utf8.Span));
        }

        return value is not null
            ? new JsonReading<T>(value, [])
            : throw new InvalidOperationException("The reader gave up without reporting a fault.");
    }

    private static JsonReading<T> Refused<T>(JsonFault fault)
        where T : class => new(null, [fault]);
}
