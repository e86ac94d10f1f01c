using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A line of text; blanks around it are taken off.</summary>
public sealed class LineValue : FileValue<string?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Line();

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Text();

    /// <inheritdoc/>
    public override string? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return at.Is(JsonValueKind.String, Wanted(reading)) ? at.Text.Trim() : null;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, string? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStringValue(value);
    }
}
