using System.Collections.Immutable;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Reads a list of things with names, and gives each an id.</summary>
/// <remarks>Names differ in more than case within a list, and so do ids.</remarks>
internal static class NamedList
{
    /// <summary>The most characters of a name.</summary>
    public const int LongestName = 60;

    /// <summary>The most items of a list.</summary>
    public const int MostItems = 500;

    /// <summary>Reads names and ids; the other fields are left to the caller.</summary>
    /// <param name="list">The list, or null where it was left out.</param>
    /// <param name="noun">What an item is, for an id where its name has no plain letters.</param>
    /// <param name="parts">What the file says otherwise.</param>
    public static ImmutableArray<NamedItem> Read(JsonCursor? list, string noun, HouseholdParts parts)
    {
        List<JsonFields> items = [.. (list?.Items(MostItems) ?? []).Select(item => item.Fields())];
        List<string> names = ReadNames(items, noun, parts.IsStored);

        // Ids that were written come first: a derived one gives way to them, wherever they stand.
        var taken = new HashSet<string>(StringComparer.Ordinal);
        List<string?> ids = [.. items.Select(item => ReadId(item.Optional("id"), taken))];
        return [.. items.Select((item, i) => new NamedItem(item, ids[i] ?? ItemId.From(names[i], noun, taken), names[i]))];
    }

    private static List<string> ReadNames(List<JsonFields> items, string noun, bool areStored)
    {
        var names = new List<string>();
        var firsts = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (JsonFields item in items)
        {
            JsonCursor field = item.Required("name");
            string name = field.OneLine(LongestName);
            if (field.IsSound && !areStored && NameRule.Refusal(name, noun) is { } refusal)
            {
                field.Refuse(refusal);
            }
            else if (field.IsSound && !firsts.TryAdd(name, item.Owner.Place))
            {
                field.Refuse($"\"{SafeText.Shown(name)}\" is already the name of {firsts[name]}; give each its own.");
            }

            names.Add(name);
        }

        return names;
    }

    private static string? ReadId(JsonCursor? field, HashSet<string> taken)
    {
        string? id = field?.OneLine(ItemId.Longest);
        if (field is null || id is null || !field.IsSound)
        {
            return null;
        }

        if (!ItemId.IsValid(id))
        {
            field.Refuse($"\"{SafeText.Shown(id)}\" is not an id; write lower-case letters a to z, digits and single hyphens, or leave it out.");
        }
        else if (!taken.Add(id))
        {
            field.Refuse($"\"{id}\" is already the id of another one in this list; give each its own, or leave it out.");
        }

        return id;
    }
}
