using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>
/// Where notes come from: <c>{"kind":"teller"}</c> or <c>{"kind":"machine","notes":["20"],"limit":"500"}</c>,
/// the limit optional.
/// </summary>
public static class BankFormat
{
    /// <summary>Reads where notes come from.</summary>
    /// <param name="bank">The object.</param>
    /// <param name="currency">The currency.</param>
    /// <param name="inUse">The notes in use; a machine gives no others.</param>
    public static CashSource Read(JsonCursor bank, Currency currency, ImmutableArray<Money> inUse)
    {
        ArgumentNullException.ThrowIfNull(bank);
        JsonFields fields = bank.Fields();
        switch (fields.Required("kind").Word("teller", "machine"))
        {
            case "teller":
                fields.RefuseOthers();
                break;
            case "machine":
                CashSource.Machine machine = ReadMachine(fields, currency, inUse);
                fields.RefuseOthers();
                return machine;
        }

        return new CashSource.Teller();
    }

    /// <summary>Writes where notes come from as a field.</summary>
    public static void Write(Utf8JsonWriter json, string name, CashSource bank)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartObject(name);
        if (bank is CashSource.Machine machine)
        {
            json.WriteString("kind", "machine");
            CashFormat.WritePieces(json, "notes", machine.Notes);
            json.WriteAmount("limit", machine.Limit);
        }
        else
        {
            json.WriteString("kind", "teller");
        }

        json.WriteEndObject();
    }

    internal static IEnumerable<Money> Amounts(CashSource bank) =>
        bank is not CashSource.Machine machine ? []
        : machine.Limit is { } limit ? [.. machine.Notes, limit]
        : machine.Notes;

    private static CashSource.Machine ReadMachine(JsonFields fields, Currency currency, ImmutableArray<Money> inUse)
    {
        ImmutableArray<Money> notes = CashFormat.ReadNotes(fields.Required("notes"), currency, inUse);
        JsonCursor? field = fields.Optional("limit");
        Money? limit = field?.AmountAboveZero(currency);
        if (fields.Owner.IsSound && field is not null && limit < notes[^1])
        {
            field.Refuse($"The machine's smallest note is {JsonWriting.PieceText(notes[^1])}, so with this limit it gives nothing; raise it or leave it out.");
        }

        return new CashSource.Machine(notes, limit);
    }
}
