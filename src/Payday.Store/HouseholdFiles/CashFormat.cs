using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Notes and coins: lists of values such as <c>["20","10"]</c>, and counts such as <c>{"20":3}</c>.</summary>
public static class CashFormat
{
    private const int MostPieces = 30;
    private const int MostOfOne = 1_000_000;

    /// <summary>Reads values of notes or coins, in any order.</summary>
    /// <returns>The values, largest first.</returns>
    public static ImmutableArray<Money> ReadPieces(JsonCursor list, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(list);
        var pieces = new SortedSet<Money>();
        foreach (JsonCursor item in list.Items(MostPieces))
        {
            Money piece = item.AmountAboveZero(currency);
            if (item.IsSound && !pieces.Add(piece))
            {
                item.Refuse($"{JsonWriting.PieceText(piece)} stands in this list twice; keep one of them.");
            }
        }

        return [.. pieces.Reverse()];
    }

    /// <summary>Reads values of notes, at least one, each of them among those in use.</summary>
    /// <param name="list">The list.</param>
    /// <param name="currency">The currency.</param>
    /// <param name="inUse">The notes in use; where there are none, any note is taken.</param>
    public static ImmutableArray<Money> ReadNotes(JsonCursor list, Currency currency, ImmutableArray<Money> inUse)
    {
        ImmutableArray<Money> notes = ReadPieces(list, currency);
        if (list.IsSound && notes.IsEmpty)
        {
            list.Refuse("A list without notes is no use; write at least one, such as [\"20\"].");
        }
        else if (list.IsSound && !inUse.IsEmpty && notes.Except(inUse).ToArray() is [Money stranger, ..])
        {
            list.Refuse(NotInUse(stranger, inUse));
        }

        return notes;
    }

    /// <summary>Reads the value of one note among those in use.</summary>
    /// <inheritdoc cref="ReadNotes"/>
    public static Money ReadNote(JsonCursor note, Currency currency, ImmutableArray<Money> inUse)
    {
        ArgumentNullException.ThrowIfNull(note);
        Money value = note.AmountAboveZero(currency);
        if (note.IsSound && !inUse.IsEmpty && !inUse.Contains(value))
        {
            note.Refuse(NotInUse(value, inUse));
        }

        return value;
    }

    /// <summary>Reads how many there are of each note.</summary>
    /// <returns>By value in minor units.</returns>
    /// <inheritdoc cref="ReadNotes"/>
    public static Notes ReadCounts(JsonCursor counts, Currency currency, ImmutableArray<Money> inUse)
    {
        ArgumentNullException.ThrowIfNull(counts);
        var read = new Dictionary<long, int>();
        foreach ((string name, JsonCursor field) in counts.Entries(MostPieces))
        {
            int count = field.Count(0, MostOfOne);
            Result<Money> note = JsonCursor.AmountIn(name, currency);
            if (!note.Ok)
            {
                field.Refuse(note.Fault);
            }
            else if (!note.Value.IsPositive || (!inUse.IsEmpty && !inUse.Contains(note.Value)))
            {
                field.Refuse(NotInUse(note.Value, inUse));
            }
            else if (!read.TryAdd(note.Value.MinorUnits, count))
            {
                field.Refuse($"{JsonWriting.PieceText(note.Value)} is counted here twice; keep one of them.");
            }
        }

        return Notes.Of(read);
    }

    /// <summary>Writes values as a field.</summary>
    public static void WritePieces(Utf8JsonWriter json, string name, ImmutableArray<Money> pieces) =>
        json.WriteTexts(name, pieces.Select(JsonWriting.PieceText));

    /// <summary>Writes counts as a field, the largest note first.</summary>
    public static void WriteCounts(Utf8JsonWriter json, string name, Notes counts, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(counts);
        json.WriteStartObject(name);
        foreach ((long note, int count) in counts.Reverse())
        {
            json.WriteNumber(JsonWriting.PieceText(Money.FromMinorUnits(note, currency)), count);
        }

        json.WriteEndObject();
    }

    private static string NotInUse(Money note, ImmutableArray<Money> inUse) =>
        inUse.IsEmpty
            ? $"There is no note of {JsonWriting.PieceText(note)}; write one above zero."
            : $"There is no note of {JsonWriting.PieceText(note)} in use; write one of {string.Join(", ", inUse.Select(JsonWriting.PieceText))}.";
}
