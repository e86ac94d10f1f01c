using System.Text.Json;

namespace Payday.Store.Json;

/// <summary>The fields of an object in a JSON text; remembers which it was asked for.</summary>
public sealed class JsonFields
{
    private readonly JsonElement? element;
    private readonly List<string> known = [];

    internal JsonFields(JsonCursor owner, JsonElement? element)
    {
        Owner = owner;
        this.element = element;
    }

    /// <summary>The object itself.</summary>
    public JsonCursor Owner { get; }

    /// <summary>A field that must be there; reading it reports where it is missing.</summary>
    public JsonCursor Required(string name) => Owner.Field(name, Find(name));

    /// <summary>A field that may be left out: null then.</summary>
    public JsonCursor? Optional(string name) => Find(name) is { } value ? Owner.Field(name, value) : null;

    /// <summary>
    /// Refuses the fields that were never asked for: a misspelt name would otherwise be lost without a word.
    /// Call it last.
    /// </summary>
    public void RefuseOthers()
    {
        if (element is not { } there)
        {
            return;
        }

        foreach (JsonProperty field in there.EnumerateObject())
        {
            if (!known.Contains(field.Name))
            {
                Owner.Field(field.Name, field.Value)
                    .Refuse($"This field is not known here; take it out, or write one of {string.Join(", ", known)}.");
            }
        }
    }

    private JsonElement? Find(string name)
    {
        if (!known.Contains(name))
        {
            known.Add(name);
        }

        return element is { } there && there.TryGetProperty(name, out JsonElement value) ? value : null;
    }
}
