using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>One of the household's lists: how it shows, and what an item of it has.</summary>
/// <param name="Key">What the household file calls it.</param>
/// <param name="Noun">What an item is.</param>
/// <param name="Title">What the person reads.</param>
/// <param name="Help">What it is for, in a sentence.</param>
/// <param name="Fields">The fields of an item.</param>
internal abstract record SetupList(string Key, string Noun, string Title, string Help, ImmutableArray<SetupField> Fields)
{
    /// <summary>Whether an item ends on a date, rather than being taken out.</summary>
    public virtual bool HasEnd => false;

    /// <summary>The field that ends an item.</summary>
    public static SetupField Until { get; } = new SetupField(
        "Until", FieldPath.Of("until"), new DateType(), "The last date on which it comes, like 2026-12-31; empty while it goes on.").Optional();

    /// <summary>The field of the name.</summary>
    protected static SetupField Name { get; } = new("Name", FieldPath.Of("name"), new LineType(), "What you call it, 1 to 60 characters; it also stands on papers.");

    // Below the fields that it needs: static properties are made in the order of the text.
    /// <summary>All lists, in the order in which a household is set up.</summary>
    public static ImmutableArray<SetupList> All { get; } = [new SourceList(), new BillList(), new DebtList(), new PotList()];

    /// <summary>The columns of the list.</summary>
    public abstract ImmutableArray<TextColumn> Columns { get; }

    /// <summary>The cells of an item.</summary>
    public abstract ImmutableArray<string> Cells(JsonObject item, SetupWork work);

    /// <summary>A new item, with the usual choices made.</summary>
    public abstract JsonObject Fresh(SetupWork work);

    /// <summary>An item as the form has it.</summary>
    public virtual JsonObject Opened(JsonObject item, SetupWork work) => item;

    /// <summary>The items in the order shown, each with its place in the file.</summary>
    public virtual ImmutableArray<(int Index, JsonObject Item)> Ordered(SetupWork work) => [.. work.Items(Key).Select((item, i) => (i, item))];

    /// <summary>Exchanges two items of a household.</summary>
    public virtual void Exchange(JsonObject household, int one, int other)
    {
        var list = (JsonArray)household[Key]!;
        JsonNode first = list[one]!.DeepClone();
        list[one] = list[other]!.DeepClone();
        list[other] = first;
    }

    /// <summary>Why the start can't be changed any more, or null.</summary>
    protected static string? SinceStart(SetupWork work, JsonObject item) =>
        work.HasHistory ? "It is part of the ledger since a payday was closed, and stays as it is." : null;

    /// <summary>An amount of an item as the household writes it; empty where there is none.</summary>
    protected static string Amount(JsonNode? value, SetupWork work)
    {
        Result<Money> amount = Money.ParsePlain(value?.ToString(), work.Currency);
        return amount.Ok ? amount.Value.ToString(work.Style) : "";
    }

    /// <summary>A field of an item as the form shows it; empty where there is none.</summary>
    protected string Shown(JsonObject item, string label, SetupWork work) =>
        Fields.FirstOrDefault(field => field.Label == label && field.Applies(item)) is { } found && found.Path.In(item) is { } value
            ? found.Type.Show(value, work)
            : "";
}
