using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Lists;

namespace Payday.Screens.Setup;

/// <summary>
/// The values of a form. A change is stored at once when nothing needed is missing; until then it is kept here.
/// </summary>
internal sealed class ItemForm
{
    private readonly SetupWork work;
    private readonly ImmutableArray<SetupField> fields;
    private readonly string? list;
    private readonly Func<JsonObject>? fresh;
    private JsonObject values;

    private ItemForm(SetupWork work, ImmutableArray<SetupField> fields, string? list, int? index, JsonObject values, Func<JsonObject>? fresh = null)
    {
        this.fresh = fresh;
        this.work = work;
        this.fields = fields;
        this.list = list;
        this.values = values;
        Index = index;
    }

    /// <summary>The place in the list; null for an item that isn't stored yet, or the household itself.</summary>
    public int? Index { get; private set; }

    /// <summary>Whether what the form holds is what is stored.</summary>
    public bool IsStored { get; private set; } = true;

    /// <summary>The fields that the item has.</summary>
    public ImmutableArray<SetupField> Fields => [.. fields.Where(known => known.Applies(values))];

    /// <summary>The fields that are needed and empty.</summary>
    public ImmutableArray<SetupField> Missing => MissingIn(values);

    /// <summary>A form of the household's own fields.</summary>
    public static ItemForm OfHousehold(SetupWork work, ImmutableArray<SetupField> fields) => new(work, fields, null, null, work.Copy());

    /// <summary>A form of an item of a list.</summary>
    public static ItemForm OfItem(SetupWork work, SetupList list, int index) =>
        new(work, list.Fields, list.Key, index, list.Opened((JsonObject)work.Items(list.Key)[index].DeepClone(), work));

    /// <summary>A form of an item to be added: the one that was begun before and not completed, or a new one.</summary>
    public static ItemForm OfNew(SetupWork work, SetupList list) =>
        new(work, list.Fields, list.Key, null, work.Begun(list.Key) ?? list.Fresh(work), () => list.Fresh(work)) { IsStored = false };

    /// <summary>Whether it is an item to be added that is kept until it is complete.</summary>
    public bool IsBegun => list is not null && Index is null && work.Begun(list) is not null;

    /// <summary>What a field holds, or null.</summary>
    public JsonNode? this[SetupField field] => field.Path.In(values);

    /// <summary>The values that a field can have here; none where it is typed.</summary>
    public ImmutableArray<Choice> Choices(SetupField field) => [.. field.Type.Choices(work).Where(choice => field.Offers(values, choice))];

    /// <summary>Why a field can't be changed now, or null.</summary>
    public string? Locked(SetupField field) => field.Locked(work, values);

    /// <summary>Changes a field by what was typed; nothing typed empties a field that may be empty.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    public string? Type(SetupField field, string text)
    {
        if (text.Trim().Length == 0 && !field.Needed(values))
        {
            return Change(field, null);
        }

        Result<JsonNode> value = field.Type.Take(text, work);
        return value.Ok ? Change(field, value.Value) : value.Fault;
    }

    /// <summary>Changes a field.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    public string? Change(SetupField field, JsonNode? value)
    {
        var next = (JsonObject)values.DeepClone();
        bool isOther = !JsonNode.DeepEquals(field.Path.In(values), value);
        field.Path.Put(next, value);
        if (isOther)
        {
            field.Then(next);
        }

        (JsonObject household, FieldPath place) = Placed(Stripped(next));
        FieldPath at = place.Then(field.Path);
        bool isStored = MissingIn(next).IsEmpty || (list is null && work.TakesParts);
        string? fault = isStored ? Store(household, list is null ? at : place) : work.FaultAt(household, at);
        if (fault is not null)
        {
            return fault;
        }

        values = next;
        IsStored = isStored;
        if (list is not null && Index is null && !isStored)
        {
            work.KeepBegun(list, values);
        }

        if (isStored && list is not null)
        {
            Index ??= work.Items(list).Count - 1;
            values["id"] = work.Items(list)[Index.Value]["id"]?.DeepClone();
        }

        return null;
    }

    /// <summary>Forgets what was begun, and begins an empty item.</summary>
    public void Restart()
    {
        work.KeepBegun(list!, null);
        values = fresh!();
    }

    // What was begun goes with the same write that has it whole, so that it is never there twice.
    private string? Store(JsonObject household, FieldPath place)
    {
        JsonObject? begun = list is null || Index is not null ? null : work.Begun(list);
        if (begun is not null)
        {
            work.KeepBegun(list!, null);
        }

        string? fault = work.Put(household, place);
        if (fault is not null && begun is not null)
        {
            work.KeepBegun(list!, begun);
        }

        return fault;
    }

    private ImmutableArray<SetupField> MissingIn(JsonObject item) =>
        [.. fields.Where(field => field.Applies(item) && field.Needed(item) && field.Path.In(item) is null)];

    private (JsonObject Household, FieldPath Place) Placed(JsonObject item)
    {
        if (list is null)
        {
            return (item, FieldPath.Of());
        }

        JsonObject household = work.Copy();
        JsonArray items = household[list] as JsonArray ?? [];
        household[list] = items;
        int index = Index ?? items.Count;
        FieldPath.Item(list, index).Put(household, item);
        return (household, FieldPath.Item(list, index));
    }

    // What belongs to another kind of schedule or pot stays in the form, should the person come back to it, and goes no further.
    private JsonObject Stripped(JsonObject item)
    {
        var stripped = (JsonObject)item.DeepClone();
        FieldPath[] kept = [.. fields.Where(field => field.Applies(item) && !field.FormOnly).Select(field => field.Path)];
        foreach (SetupField field in fields.Where(field => (field.FormOnly || !field.Applies(item)) && !kept.Contains(field.Path)))
        {
            field.Path.Put(stripped, null);
        }

        if (stripped["id"] is null)
        {
            stripped.Remove("id");
        }

        return stripped;
    }
}
