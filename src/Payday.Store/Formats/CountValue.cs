using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A whole number, without quotes. Whether it is one that fits is for the check to say.</summary>
/// <param name="least">The least that fits, to say so.</param>
/// <param name="most">The most that fits, to say so.</param>
public sealed class CountValue(int least, int most) : FileValue<int?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Count(least, most);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Count(least, most);

    /// <inheritdoc/>
    public override int? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        if (!at.Is(JsonValueKind.Number, Wanted(reading)))
        {
            return null;
        }

        if (at.Int is null)
        {
            at.Refuse(new JsonTextFault.NotACount(at.Raw, least, most));
        }

        return at.Int;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, int? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteNumberValue(value!.Value);
    }
}
