using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>An item of a list of named things: its fields, its id and its name.</summary>
internal sealed record NamedItem(JsonFields Fields, string Id, string Name)
{
    /// <summary>Whether nothing is wrong with it so far.</summary>
    public bool IsSound => Fields.Owner.IsSound;
}
