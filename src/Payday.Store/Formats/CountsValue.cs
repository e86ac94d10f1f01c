using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>How many notes there are of each value, such as <c>{"20":3}</c>.</summary>
/// <param name="member">The member that holds them; the file calls each entry by its note.</param>
public sealed class CountsValue(Func<DraftMember> member) : FileValue<ImmutableArray<NoteCountDraft>?>
{
    private static readonly CountValue Count = new(0, HouseholdLimits.MostOfOneNote);

    /// <inheritdoc/>
    public override FileShape Shape => new FileShape.Counts(Count.Shape);

    /// <inheritdoc/>
    public override JsonWanted Wanted(FileReading reading) => new JsonWanted.Object();

    /// <inheritdoc/>
    public override ImmutableArray<NoteCountDraft>? Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        ArgumentNullException.ThrowIfNull(reading);
        var counts = ImmutableArray.CreateBuilder<NoteCountDraft>();
        foreach ((string name, JsonCursor entry) in at.Entries(HouseholdLimits.MostPieces))
        {
            reading.Names[new DraftStep(member(), counts.Count)] = name;
            int? count = Count.Read(entry, reading);
            decimal? note = AmountValue.In(name, entry, reading);
            counts.Add(new NoteCountDraft(note ?? 0, count ?? 0));
        }

        return counts.ToImmutable();
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, ImmutableArray<NoteCountDraft>? value, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject();
        foreach (NoteCountDraft entry in value!.Value)
        {
            json.WriteNumber(FileValues.PieceText(entry.Note, currency), entry.Count);
        }

        json.WriteEndObject();
    }

    internal override FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading) => item.Item is null
        ? around
        : around.In(JsonPlace.Field(around.Place, reading.Names[item]), Count.Wanted(reading));
}
