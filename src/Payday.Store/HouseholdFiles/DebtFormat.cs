using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Debts;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Debts in a household file.</summary>
internal static class DebtFormat
{
    private const int HighestRate = 10;

    public static ImmutableArray<Debt> Read(JsonCursor? list, HouseholdParts parts) =>
        [.. NamedList.Read(list, "debt", parts).Select(item => Read(item, parts))];

    public static void Write(Utf8JsonWriter json, ImmutableArray<Debt> debts)
    {
        json.WriteStartArray("debts");
        foreach (Debt debt in debts)
        {
            json.WriteStartObject();
            json.WriteString("id", debt.Id);
            json.WriteString("name", debt.Name);
            json.WriteAmount("balance", debt.Opening);
            json.WriteFraction("rate", debt.YearlyRate);
            MinimumFormat.Write(json, "minimum", debt.Minimum);
            MonthDayFormat.Write(json, "due", debt.Due);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static Debt Read(NamedItem item, HouseholdParts parts)
    {
        JsonFields fields = item.Fields;
        var debt = new Debt(
            item.Id,
            item.Name,
            fields.Required("balance").Amount(parts.Currency),
            fields.Required("rate").Fraction(HighestRate),
            MinimumFormat.Read(fields.Required("minimum"), parts.Currency),
            MonthDayFormat.Read(fields.Required("due")));
        fields.RefuseOthers();
        return debt;
    }
}
