using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Bills in a household file, each with what is set aside for it at the start.</summary>
internal static class BillFormat
{
    public static ImmutableArray<Bill> Read(JsonCursor? list, HouseholdParts parts) =>
        [.. NamedList.Read(list, "bill", parts).Select(item => Read(item, parts))];

    public static void Write(Utf8JsonWriter json, ImmutableArray<Bill> bills, ImmutableSortedDictionary<string, Money> setAside)
    {
        json.WriteStartArray("bills");
        foreach (Bill bill in bills)
        {
            json.WriteStartObject();
            json.WriteString("id", bill.Id);
            json.WriteString("name", bill.Name);
            json.WriteAmount("amount", bill.Amount);
            ScheduleFormat.Write(json, "schedule", bill.Schedule);
            json.WriteString("shift", Words.Shifts.WordFor(bill.Shift));
            json.WriteBoolean("essential", bill.Essential);
            json.WriteAmount("setAside", setAside.TryGetValue(bill.Id, out Money held) ? held : null);
            json.WriteDate("until", bill.Until);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static Bill Read(NamedItem item, HouseholdParts parts)
    {
        JsonFields fields = item.Fields;
        var bill = new Bill(
            item.Id,
            item.Name,
            fields.Required("amount").Amount(parts.Currency),
            ScheduleFormat.Read(fields.Required("schedule")),
            fields.Required("shift").OneOf(Words.Shifts),
            fields.Required("essential").Flag(),
            fields.Optional("until") is { } until ? LaterDate.Read(until, parts) : null);
        if (fields.Optional("setAside") is { } held)
        {
            parts.SetAside[bill.Id] = held.Amount(parts.Currency);
        }

        fields.RefuseOthers();
        return bill;
    }
}
