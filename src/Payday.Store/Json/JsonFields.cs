using System.Text.Json;

namespace Payday.Store.Json;

/// <summary>The fields of an object in a JSON text; remembers which it was asked for.</summary>
public sealed class JsonFields
{
    private readonly JsonElement? element;
    private readonly List<string> known = [];
    private string? passedOver;

    internal JsonFields(JsonCursor owner, JsonElement? element)
    {
        Owner = owner;
        this.element = element;
    }

    /// <summary>The object itself.</summary>
    public JsonCursor Owner { get; }

    /// <summary>Whether it is an object at all.</summary>
    public bool AreThere => element is not null;

    /// <summary>A field, or null where it was left out.</summary>
    public JsonCursor? Find(string name)
    {
        if (!known.Contains(name))
        {
            known.Add(name);
        }

        return element is { } there && there.TryGetProperty(name, out JsonElement value) ? Owner.Field(name, value) : null;
    }

    /// <summary>Lets a field be there that says nothing; it is never named to a person.</summary>
    public void PassOver(string name) => passedOver = name;

    /// <summary>Reports that a field is missing.</summary>
    /// <returns>Nothing.</returns>
    public T? Missing<T>(string name, JsonWanted wanted)
    {
        if (AreThere)
        {
            Owner.RefuseMissing(name, wanted);
        }

        return default;
    }

    /// <summary>Whether a field is there; it isn't known by that.</summary>
    public bool Has(string name) => element is { } there && there.TryGetProperty(name, out _);

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
            if (!known.Contains(field.Name) && field.Name != passedOver)
            {
                Owner.Field(field.Name, field.Value).Refuse(new JsonTextFault.UnknownField([.. known]));
            }
        }
    }
}
