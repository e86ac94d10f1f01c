using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A part of a draft that stands in a file as an object.</summary>
/// <param name="format">Its fields.</param>
public sealed class PartValue<TPart>(PartFormat<TPart> format) : FileValue<TPart?>
    where TPart : class, new()
{
    /// <inheritdoc/>
    public override FileShape Shape => format.Shape;

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Object();

    // Something else than an object is there all the same, with nothing in it that could be read.
    /// <inheritdoc/>
    public override TPart? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return at.Is(JsonValueKind.Object, Wanted(reading)) ? format.Read(at, reading) : new();
    }

    /// <inheritdoc/>
    public override bool HasContent(TPart? value) => value is not null && format.HasContent(value);

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, TPart? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject();
        format.WriteFields(json, value!, currency);
        json.WriteEndObject();
    }

    internal override IEnumerable<DraftMember> AllMembers => format.AllMembers;

    internal override IEnumerable<string> AllNames => format.AllNames;

    internal override FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading) => format.Find(around, rest, reading);
}
