using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>True or false.</summary>
/// <param name="writesFalse">Whether false is written too, rather than left out.</param>
public sealed class FlagValue(bool writesFalse = true) : FileValue<bool?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Flag();

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Flag();

    /// <inheritdoc/>
    public override bool? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return at.Kind == JsonValueKind.False ? false : at.Is(JsonValueKind.True, Wanted(reading)) ? true : null;
    }

    /// <inheritdoc/>
    public override bool HasContent(bool? value) => value == true || (writesFalse && value is not null);

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, bool? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteBooleanValue(value!.Value);
    }
}
