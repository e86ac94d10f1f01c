using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A list of plain values.</summary>
/// <typeparam name="T">A value.</typeparam>
/// <param name="item">How one stands in the file.</param>
/// <param name="most">The most there may be; a longer list is not read at all.</param>
/// <param name="unread">Takes the place of one that can't be read, so that the others keep theirs; no check takes it.</param>
public sealed class ListValue<T>(FileValue<T?> item, int most, T unread) : FileValue<ImmutableArray<T>?>
    where T : struct
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.List(item.Shape, most);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.List();

    /// <inheritdoc/>
    public override ImmutableArray<T>? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return [.. at.Items(most).Select(one => item.Read(one, reading) ?? unread)];
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, ImmutableArray<T>? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartArray();
        foreach (T one in value!.Value)
        {
            item.Write(json, one, currency);
        }

        json.WriteEndArray();
    }

    internal override FileSpot Find(FileSpot around, DraftStep step, ReadOnlySpan<DraftStep> rest, FileReading reading) =>
        step.Item is { } index ? around.In(JsonPlace.Item(around.Place, index), item.Wanted(reading)) : around;
}
