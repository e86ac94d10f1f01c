using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A list of parts of a draft.</summary>
/// <param name="format">The fields of one.</param>
/// <param name="most">The most there may be; a longer list is not read at all.</param>
public sealed class ItemsValue<TPart>(PartFormat<TPart> format, int most = HouseholdLimits.MostItems) : FileValue<ImmutableArray<TPart>?>
    where TPart : class, new()
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.List(format.Shape, most);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.List();

    /// <inheritdoc/>
    public override ImmutableArray<TPart>? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return [.. at.Items(most).Select(item => format.Read(item, reading))];
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, ImmutableArray<TPart>? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartArray();
        foreach (TPart part in value!.Value)
        {
            json.WriteStartObject();
            format.WriteFields(json, part, currency);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    internal override IEnumerable<DraftMember> AllMembers => format.AllMembers;

    internal override IEnumerable<string> AllNames => format.AllNames;

    internal override FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading) => item.Item is { } index
        ? format.Find(around.In(JsonPlace.Item(around.Place, index), new JsonWanted.Object()), rest, reading)
        : around;
}
