using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>What was there at the start, but for the parts that stand with each bill and pot.</summary>
internal static class OpeningFormat
{
    public static Money Read(JsonCursor? opening, HouseholdParts parts, out Notes notesOnHand)
    {
        notesOnHand = Notes.None;
        if (opening is null)
        {
            return Money.Zero(parts.Currency);
        }

        JsonFields fields = opening.Fields();
        Money account = fields.Required("account").Amount(parts.Currency);
        if (fields.Optional("notesOnHand") is { } counts)
        {
            notesOnHand = CashFormat.ReadCounts(counts, parts.Currency, parts.Notes);
        }

        fields.RefuseOthers();
        return account;
    }

    public static void Write(Utf8JsonWriter json, OpeningBalances opening, Currency currency)
    {
        json.WriteStartObject("opening");
        json.WriteAmount("account", opening.Account);
        CashFormat.WriteCounts(json, "notesOnHand", opening.NotesOnHand, currency);
        json.WriteEndObject();
    }
}
