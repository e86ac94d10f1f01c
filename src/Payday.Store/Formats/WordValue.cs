using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>One of some words.</summary>
/// <typeparam name="T">What they stand for.</typeparam>
/// <param name="choices">The words.</param>
public sealed class WordValue<T>(JsonChoices<T> choices) : FileValue<T?>
    where T : struct
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Word([.. choices.Words]);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Word([.. choices.Words]);

    /// <inheritdoc/>
    public override T? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        if (!at.Is(JsonValueKind.String, Wanted(reading)))
        {
            return null;
        }

        T? value = choices.Find(at.Text);
        if (value is null)
        {
            at.Refuse(new JsonTextFault.UnknownWord(at.Text, [.. choices.Words]));
        }

        return value;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, T? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStringValue(choices.WordFor(value!.Value));
    }
}
