using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;

namespace Payday.Screens.Setup.Fields;

/// <summary>Where a value stands within an object of the household file.</summary>
/// <param name="Steps">Names of fields from the outside in; an item of a list is its index after a <c>#</c>, as in <c>#0</c>.</param>
internal readonly record struct FieldPath(ImmutableArray<string> Steps)
{
    /// <summary>A path of steps.</summary>
    public static FieldPath Of(params ImmutableArray<string> steps) => new(steps);

    /// <summary>An item of a list.</summary>
    public static FieldPath Item(string list, int index) =>
        Of(list, string.Create(CultureInfo.InvariantCulture, $"#{index}"));

    /// <summary>The path within what stands here.</summary>
    public FieldPath Then(FieldPath inner) => new([.. Steps, .. inner.Steps]);

    /// <summary>The place as faults of the household file name it, e.g. <c>bills[2].amount</c>.</summary>
    public override string ToString() =>
        string.Concat(Steps.Select((step, i) => step[0] == '#' ? $"[{step[1..]}]" : (i == 0 ? "" : ".") + step));

    /// <summary>Whether both have the same steps.</summary>
    public bool Equals(FieldPath other) => Steps.SequenceEqual(other.Steps);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>Whether a place of a fault is this one or inside it.</summary>
    public bool Holds(string place)
    {
        string here = ToString();
        return place.StartsWith(here, StringComparison.Ordinal)
            && (place.Length == here.Length || here.Length == 0 || place[here.Length] is '.' or '[');
    }

    /// <summary>What stands here, or null.</summary>
    public JsonNode? In(JsonNode? root)
    {
        foreach (string step in Steps)
        {
            root = root switch
            {
                JsonObject fields => fields[step],
                JsonArray items when Index(step) < items.Count => items[Index(step)],
                _ => null,
            };
        }

        return root;
    }

    /// <summary>Puts a value here, making what is around it; null takes a field out, and an object or list that is empty then goes too.</summary>
    public void Put(JsonObject root, JsonNode? value)
    {
        if (Steps.Length == 1)
        {
            PutField(root, Steps[0], value);
            return;
        }

        var rest = new FieldPath(Steps[1..]);
        if (rest.Steps[0][0] == '#')
        {
            JsonArray list = root[Steps[0]] as JsonArray ?? [];
            rest.PutInto(list, value);
            PutField(root, Steps[0], list.All(item => item is null) ? null : list);
            return;
        }

        JsonObject inner = root[Steps[0]] as JsonObject ?? [];
        rest.Put(inner, value);
        PutField(root, Steps[0], inner.Count == 0 ? null : inner);
    }

    private void PutInto(JsonArray list, JsonNode? value)
    {
        int index = Index(Steps[0]);
        if (value is null && index >= list.Count)
        {
            return;
        }

        while (list.Count <= index)
        {
            list.Add((JsonNode?)null);
        }

        if (Steps.Length == 1)
        {
            list[index] = value;
            return;
        }

        JsonObject inner = list[index] as JsonObject ?? [];
        new FieldPath(Steps[1..]).Put(inner, value);
        if (!ReferenceEquals(list[index], inner))
        {
            list[index] = inner;
        }
    }

    private static void PutField(JsonObject fields, string name, JsonNode? value)
    {
        if (value is null)
        {
            fields.Remove(name);
        }
        else if (!ReferenceEquals(fields[name], value))
        {
            fields[name] = value;
        }
    }

    private static int Index(string step) => int.Parse(step.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture);
}
