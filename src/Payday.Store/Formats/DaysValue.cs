using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>Two days of the month.</summary>
public sealed class DaysValue : FileValue<ImmutableArray<MonthDay?>?>
{
    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.List(FileValues.Day.Shape, 2);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.List();

    /// <inheritdoc/>
    public override ImmutableArray<MonthDay?>? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return [.. at.Items(2).Select(day => FileValues.Day.Read(day, reading))];
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, ImmutableArray<MonthDay?>? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartArray();
        foreach (MonthDay? day in value!.Value)
        {
            if (day is not null)
            {
                FileValues.Day.Write(json, day, currency);
            }
        }

        json.WriteEndArray();
    }
}
