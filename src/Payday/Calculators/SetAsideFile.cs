using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Calculators;

/// <summary>The input of the <c>setaside</c> calculator.</summary>
/// <param name="Held">What is held already.</param>
/// <param name="Paydays">The paydays, in order.</param>
/// <param name="Dues">What falls due.</param>
internal sealed record SetAsideFile(Money Held, ImmutableArray<PlannedPayday> Paydays, ImmutableArray<Due> Dues)
{
    private const int MostRows = 100_000;

    /// <summary>Reads it.</summary>
    public static SetAsideFile Read(JsonCursor file)
    {
        JsonFields fields = file.Fields();
        Currency currency = CalculatorFields.CurrencyOf(fields);
        Money held = fields.Optional("held")?.Amount(currency) ?? Money.Zero(currency);
        JsonCursor list = fields.Required("paydays");
        IReadOnlyList<JsonCursor> items = list.Items(MostRows);
        ImmutableArray<PlannedPayday> paydays = [.. items.Select(payday => ReadPayday(payday, currency))];
        if (list.IsSound && paydays.IsEmpty)
        {
            list.Refuse("There is no payday here; write at least one.");
        }

        for (int i = 1; i < paydays.Length; i++)
        {
            if (items[i].IsSound && items[i - 1].IsSound && paydays[i].Date <= paydays[i - 1].Date)
            {
                items[i].Refuse("This payday is not after the one before it; write them in order, each date once.");
            }
        }

        ImmutableArray<Due> dues = [.. fields.Required("dues").Items(MostRows).Select(due => ReadDue(due, currency))];
        fields.RefuseOthers();
        return new SetAsideFile(held, paydays, dues);
    }

    private static PlannedPayday ReadPayday(JsonCursor payday, Currency currency)
    {
        JsonFields fields = payday.Fields();
        var read = new PlannedPayday(fields.Required("date").Date(), fields.Required("income").Amount(currency));
        fields.RefuseOthers();
        return read;
    }

    private static Due ReadDue(JsonCursor due, Currency currency)
    {
        JsonFields fields = due.Fields();
        string bill = fields.Required("bill").OneLine(CalculatorFields.LongestName);
        var read = new Due(bill, bill, fields.Required("date").Date(), fields.Required("amount").Amount(currency));
        fields.RefuseOthers();
        return read;
    }
}
