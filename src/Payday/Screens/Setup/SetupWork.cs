using System.Text.Json.Nodes;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Screens.Setup;

/// <summary>
/// A household worked on as its own file has it, so that forms have the file's fields and the file's rules, and may
/// be incomplete for a while.
/// </summary>
internal abstract class SetupWork
{
    /// <summary>The household as stored.</summary>
    public abstract JsonObject Root { get; }

    /// <summary>The date.</summary>
    public abstract LocalDate Today { get; }

    /// <summary>Whether a household may be stored that isn't complete yet.</summary>
    public abstract bool TakesParts { get; }

    /// <summary>Whether a payday has been closed, so that the start is history.</summary>
    public abstract bool HasHistory { get; }

    /// <summary>What else the last change did, in a sentence; empty for nothing.</summary>
    public virtual string Notice => "";

    /// <summary>The currency; the one without decimals that means none where it isn't known yet.</summary>
    public Currency Currency => Currency.TryFromCode(Root["currency"]?.ToString(), out Currency currency) ? currency : default;

    /// <summary>How numbers are written.</summary>
    public NumberStyle Style => Root["numbers"]?.ToString() is { } sample
        ? NumberStyle.All.FirstOrDefault(style => style.Sample == sample, NumberStyle.CommaPoint)
        : NumberStyle.CommaPoint;

    /// <summary>The notes in use, as the file writes them, largest first.</summary>
    public IEnumerable<string> Notes => (Root["notes"] as JsonArray ?? []).Select(note => note!.ToString());

    /// <summary>The items of a list.</summary>
    public IReadOnlyList<JsonObject> Items(string list) => [.. (Root[list] as JsonArray ?? []).OfType<JsonObject>()];

    /// <summary>What is wrong at a place of a household, or null.</summary>
    public abstract string? FaultAt(JsonObject next, Fields.FieldPath place);

    /// <summary>Stores a household in the place of this one.</summary>
    /// <param name="next">The household.</param>
    /// <param name="place">What was changed in it.</param>
    /// <returns>Why it was not stored, or null.</returns>
    public abstract string? Put(JsonObject next, Fields.FieldPath place);

    /// <summary>Why an item can't be taken out, or null.</summary>
    public abstract string? WhyKept(string list, string id);

    /// <summary>What is owed on a debt today, as the file writes amounts.</summary>
    public abstract string Owed(JsonObject debt);

    /// <summary>An item that was begun for a list and isn't complete yet, or null.</summary>
    public JsonObject? Begun(string list) => (JsonObject?)Begins[list]?.DeepClone();

    /// <summary>Keeps an item that isn't complete yet, one a list; null forgets it, with the next thing that is stored.</summary>
    public void KeepBegun(string list, JsonObject? item)
    {
        if (item is null)
        {
            Begins.Remove(list);
            return;
        }

        Begins[list] = item.DeepClone();
        StoreBegun();
    }

    /// <summary>By list: the items begun.</summary>
    protected abstract JsonObject Begins { get; }

    /// <summary>Stores the items begun where they outlive the program.</summary>
    protected virtual void StoreBegun()
    {
    }

    /// <summary>A copy of the household to change.</summary>
    public JsonObject Copy() => (JsonObject)Root.DeepClone();
}
