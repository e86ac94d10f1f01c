using System.Text.Json.Nodes;

namespace Payday.Screens.Setup.Fields;

/// <summary>A field of a form.</summary>
/// <param name="Label">What it is called, in a word or three.</param>
/// <param name="Path">Where its value stands in the item.</param>
/// <param name="Type">What it holds.</param>
/// <param name="Help">What it is for, in a sentence or two.</param>
internal sealed record SetupField(string Label, FieldPath Path, FieldType Type, string Help)
{
    /// <summary>Whether the item has this field, going by its other fields.</summary>
    public Func<JsonObject, bool> Applies { get; init; } = _ => true;

    /// <summary>Whether the item can't do without it.</summary>
    public Func<JsonObject, bool> Needed { get; init; } = _ => true;

    /// <summary>Why it can't be changed now, or null.</summary>
    public Func<SetupWork, JsonObject, string?> Locked { get; init; } = (_, _) => null;

    /// <summary>Whether a choice makes sense for the item, going by its other fields.</summary>
    public Func<JsonObject, Choice, bool> Offers { get; init; } = (_, _) => true;

    /// <summary>What else of the item changes with it.</summary>
    public Action<JsonObject> Then { get; init; } = _ => { };

    /// <summary>Whether only the form has it: the file says the same in another way.</summary>
    public bool FormOnly { get; init; }

    /// <summary>Whether it may be left empty.</summary>
    public SetupField Optional() => this with { Needed = _ => false };
}
