using System.Text.Json;
using Payday.Core.Faults;

namespace Payday.Store.Json;

/// <summary>A value in a JSON text that knows its place and says what is wrong with it.</summary>
/// <remarks>A cursor is used while <see cref="JsonInput"/> reads, and not after.</remarks>
public sealed class JsonCursor
{
    private readonly JsonFaultLog log;
    private readonly JsonCursor? parent;
    private readonly JsonElement element;

    private JsonCursor(JsonFaultLog log, JsonCursor? parent, string place, JsonElement element)
    {
        this.log = log;
        this.parent = parent;
        this.element = element;
        Place = place;
    }

    /// <summary>Where it stands, e.g. <c>bills[2].amount</c>; empty for the outermost value.</summary>
    public string Place { get; }

    /// <summary>What kind of value it is.</summary>
    public JsonValueKind Kind => element.ValueKind;

    /// <summary>The text of a text.</summary>
    public string Text => element.GetString()!;

    /// <summary>A number or another value as it stands there.</summary>
    public string Raw => element.GetRawText();

    /// <summary>The whole number that stands there, or null.</summary>
    public int? Int => element.TryGetInt32(out int number) ? number : null;

    internal static JsonCursor Root(JsonElement element, JsonFaultLog log) => new(log, null, "", element);

    /// <summary>Reports a fault at this place.</summary>
    public void Refuse(Fault fault)
    {
        log.Add(Place, fault);
        for (JsonCursor? around = this; around is not null; around = around.parent)
        {
            log.IsUnsound(around.Place);
        }
    }

    /// <summary>Reports that a field is missing here.</summary>
    internal void RefuseMissing(string name, FileWanted wanted)
    {
        log.AddMissing([JsonPlace.Field(Place, name), Place], new FileFault.Missing(wanted));
        for (JsonCursor? around = this; around is not null; around = around.parent)
        {
            log.IsUnsound(around.Place);
        }
    }

    /// <summary>Reports what a check found in what was read here, but where that could not be read in the first place.</summary>
    /// <param name="places">The place, then those around it, up to the outermost.</param>
    /// <param name="fault">What is wrong.</param>
    internal void RefuseChecked(IReadOnlyList<string> places, Fault fault) => log.AddChecked(places, fault);

    /// <summary>Whether it is of a kind; where not, that is reported.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="wanted">What belongs here.</param>
    public bool Is(JsonValueKind kind, FileWanted wanted)
    {
        if (Kind == kind)
        {
            return true;
        }

        Refuse(new FileFault.WrongKind(Kind, wanted));
        return false;
    }

    /// <summary>The fields of an object; none of anything else, which is reported.</summary>
    public JsonFields Fields() => new(this, Is(JsonValueKind.Object, new FileWanted.Object()) ? element : null);

    /// <summary>The items of a list; none of anything else, which is reported.</summary>
    /// <param name="most">The most items it may have.</param>
    public IReadOnlyList<JsonCursor> Items(int most) =>
        !Is(JsonValueKind.Array, new FileWanted.List()) || IsLonger(element.GetArrayLength(), most)
            ? []
            : [.. element.EnumerateArray().Select((item, i) => new JsonCursor(log, this, JsonPlace.Item(Place, i), item))];

    /// <summary>The fields of an object whose names are data, in the order of the text; none of anything else, which is reported.</summary>
    /// <param name="most">The most fields it may have.</param>
    public IReadOnlyList<(string Name, JsonCursor Value)> Entries(int most) =>
        !Is(JsonValueKind.Object, new FileWanted.Object()) || IsLonger(element.GetPropertyCount(), most)
            ? []
            : [.. element.EnumerateObject().Select(field => (field.Name, Field(field.Name, field.Value)))];

    internal JsonCursor Field(string name, JsonElement value) => new(log, this, JsonPlace.Field(Place, name), value);

    private bool IsLonger(int count, int most)
    {
        if (count > most)
        {
            Refuse(new Core.Drafts.DraftFault.TooMany(Core.Drafts.DraftPlace.Whole, count, most));
        }

        return count > most;
    }
}
