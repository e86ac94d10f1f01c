using System.Text.Json;

namespace Payday.Store.Json;

/// <summary>
/// A value in a JSON text that knows its place and says what is wrong with it.
/// </summary>
/// <remarks>
/// Each reading method either returns what stands there, or reports a fault and returns a harmless
/// stand-in (zero, an empty text, no items), so that reading goes on and all faults are found at once.
/// Ask <see cref="IsSound"/> before comparing what was read with anything else.
/// A cursor is used while <see cref="JsonInput"/> reads, and not after.
/// </remarks>
public sealed partial class JsonCursor
{
    private readonly JsonFaultLog log;
    private readonly JsonCursor? parent;
    private readonly JsonElement? element;

    // Nothing is reported about what would stand inside something that is itself missing or wrong.
    private readonly bool isMute;
    private bool hasFault;

    private JsonCursor(JsonFaultLog log, JsonCursor? parent, string place, JsonElement? element, bool isMute)
    {
        this.log = log;
        this.parent = parent;
        this.element = element;
        this.isMute = isMute;
        Place = place;
    }

    /// <summary>Where it stands, e.g. <c>bills[2].amount</c>; empty for the outermost value.</summary>
    public string Place { get; }

    /// <summary>What kind of value it is; <see cref="JsonValueKind.Undefined"/> where there is none.</summary>
    public JsonValueKind Kind => element?.ValueKind ?? JsonValueKind.Undefined;

    /// <summary>Whether nothing has been found wrong with it, or with anything inside it.</summary>
    public bool IsSound => !hasFault && !isMute;

    internal static JsonCursor Root(JsonElement element, JsonFaultLog log) => new(log, null, "", element, isMute: false);

    /// <summary>Reports a fault at this place.</summary>
    /// <param name="sentence">What is wrong and how to mend it, one sentence.</param>
    public void Refuse(string sentence)
    {
        string anchor = element is null && parent is not null ? parent.Place : Place;
        log.Add(Place, anchor, sentence);
        for (JsonCursor? cursor = this; cursor is not null; cursor = cursor.parent)
        {
            cursor.hasFault = true;
        }
    }

    /// <summary>The fields of an object.</summary>
    public JsonFields Fields() => new(this, Is(JsonValueKind.Object, "an object in { }") ? element : null);

    /// <summary>The items of a list.</summary>
    /// <param name="most">The most items it may have.</param>
    public IReadOnlyList<JsonCursor> Items(int most)
    {
        if (!Is(JsonValueKind.Array, "a list in [ ]") || IsLonger(element!.Value.GetArrayLength(), most))
        {
            return [];
        }

        return [.. element.Value.EnumerateArray()
            .Select((item, i) => new JsonCursor(log, this, JsonPlace.Item(Place, i), item, isMute: false))];
    }

    /// <summary>The fields of an object whose names are data, in the order of the text.</summary>
    /// <param name="most">The most fields it may have.</param>
    public IReadOnlyList<(string Name, JsonCursor Value)> Entries(int most)
    {
        if (!Is(JsonValueKind.Object, "an object in { }") || IsLonger(element!.Value.GetPropertyCount(), most))
        {
            return [];
        }

        return [.. element.Value.EnumerateObject().Select(field => (field.Name, Field(field.Name, field.Value)))];
    }

    internal JsonCursor Field(string name, JsonElement? value) =>
        new(log, this, JsonPlace.Field(Place, name), value, isMute: Kind != JsonValueKind.Object);

    private bool IsLonger(int count, int most)
    {
        if (count > most)
        {
            Refuse($"There are {count} entries here; at most {most} are taken.");
        }

        return count > most;
    }

    private bool Is(JsonValueKind kind, string wanted)
    {
        if (Kind == kind)
        {
            return true;
        }

        if (!isMute)
        {
            Refuse(element is null ? $"This is missing; add {wanted}." : $"{Named(Kind)} stands here; write {wanted}.");
        }

        return false;
    }

    private static string Named(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "An object",
        JsonValueKind.Array => "A list",
        JsonValueKind.String => "A text",
        JsonValueKind.Number => "A number",
        JsonValueKind.True => "True",
        JsonValueKind.False => "False",
        _ => "Null",
    };
}
