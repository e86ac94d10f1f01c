using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Store.Fields;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Calculators;

/// <summary>The input of the <c>notes</c> calculator.</summary>
internal static class NotesFile
{
    private const int MostPots = 500;

    /// <summary>Reads it.</summary>
    public static NoteRequest Read(JsonCursor file)
    {
        JsonFields fields = file.Fields();
        Currency currency = CalculatorFields.CurrencyOf(fields);
        ImmutableArray<Money> notes = CashFormat.ReadNotes(fields.Required("notes"), currency, []);
        var request = new NoteRequest(
            notes,
            fields.Optional("onHand") is { } onHand ? CashFormat.ReadCounts(onHand, currency, []) : Notes.None,
            fields.Optional("source") is { } source ? BankFormat.Read(source, currency, notes) : new CashSource.Teller(),
            [.. fields.Required("pots").Items(MostPots).Select((pot, i) => ReadPot(pot, i, currency, notes))]);
        fields.RefuseOthers();
        return request;
    }

    // A pot's place in the list tells it from another of the same name.
    private static NotePart ReadPot(JsonCursor pot, int place, Currency currency, ImmutableArray<Money> notes)
    {
        JsonFields fields = pot.Fields();
        string name = fields.Required("name").OneLine(CalculatorFields.LongestName);
        var part = new NotePart(
            new(place.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            name,
            null,
            fields.Required("amount").Amount(currency),
            NoteWishesFormat.Read(fields, currency, notes));
        fields.RefuseOthers();
        return part;
    }
}
