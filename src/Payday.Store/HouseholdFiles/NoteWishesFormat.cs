using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Which notes a pot wants: its fields <c>topNote</c> and <c>small</c>, both optional.</summary>
public static class NoteWishesFormat
{
    /// <summary>Reads the wishes among the fields of a pot.</summary>
    /// <param name="pot">The fields of the pot.</param>
    /// <param name="currency">The currency.</param>
    /// <param name="inUse">The notes in use.</param>
    public static NoteWishes Read(JsonFields pot, Currency currency, ImmutableArray<Money> inUse)
    {
        ArgumentNullException.ThrowIfNull(pot);
        Money? top = pot.Optional("topNote") is { } note ? CashFormat.ReadNote(note, currency, inUse) : null;
        SmallMoney? small = pot.Optional("small") is { } field ? ReadSmall(field, currency, inUse) : null;
        return new NoteWishes(top, small);
    }

    /// <summary>Writes the wishes as fields of a pot.</summary>
    public static void Write(Utf8JsonWriter json, NoteWishes wishes)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(wishes);
        if (wishes.TopNote is { } top)
        {
            json.WriteString("topNote", JsonWriting.PieceText(top));
        }

        if (wishes.Small is { } small)
        {
            json.WriteStartObject("small");
            json.WriteString("note", JsonWriting.PieceText(small.Note));
            json.WriteAmount("atLeast", small.AtLeast);
            json.WriteEndObject();
        }
    }

    internal static IEnumerable<Money> Amounts(NoteWishes wishes)
    {
        if (wishes.TopNote is { } top)
        {
            yield return top;
        }

        if (wishes.Small is { } small)
        {
            yield return small.Note;
            yield return small.AtLeast;
        }
    }

    private static SmallMoney ReadSmall(JsonCursor field, Currency currency, ImmutableArray<Money> inUse)
    {
        JsonFields fields = field.Fields();
        var small = new SmallMoney(
            CashFormat.ReadNote(fields.Required("note"), currency, inUse),
            fields.Required("atLeast").AmountAboveZero(currency));
        fields.RefuseOthers();
        return small;
    }
}
