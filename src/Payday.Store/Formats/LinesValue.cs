using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A list of lines of text.</summary>
/// <param name="most">The most there may be; a longer list is not read at all.</param>
public sealed class LinesValue(int most) : FileValue<ImmutableArray<string>?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.List(FileValues.Line.Shape, most);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.List();

    // An empty one takes the place of one that can't be read: no check takes it.
    /// <inheritdoc/>
    public override ImmutableArray<string>? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return [.. at.Items(most).Select(line => FileValues.Line.Read(line, reading) ?? "")];
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, ImmutableArray<string>? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartArray();
        foreach (string line in value!.Value)
        {
            json.WriteStringValue(line);
        }

        json.WriteEndArray();
    }
}
