using System.Text.Json;
using Payday.Core.Households;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Writes the outermost object of a household file.</summary>
internal static class HouseholdWriter
{
    public static void Write(Utf8JsonWriter json, Household household)
    {
        RefuseWhatWouldBeLost(household);
        OpeningBalances opening = household.Opening;
        json.WriteStartObject();
        json.WriteNumber("version", HouseholdFile.Version);
        json.WriteString("name", household.Name);
        json.WriteDate("start", household.Start);
        SettingsFormat.Write(json, household.Settings);
        OpeningFormat.Write(json, opening, household.Currency);
        SourceFormat.Write(json, household.Sources);
        BillFormat.Write(json, household.Bills, opening.SetAside);
        DebtFormat.Write(json, household.Debts);
        PotFormat.Write(json, household.Pots, opening.Pots);
        json.WriteEndObject();
    }

    private static void RefuseWhatWouldBeLost(Household household)
    {
        if (HouseholdTotals.Amounts(household).Any(amount => amount.Currency != household.Currency))
        {
            throw new ArgumentException("An amount is not in the household's currency.", nameof(household));
        }

        if (household.Opening.SetAside.Keys.Except(household.Bills.Select(bill => bill.Id)).Any()
            || household.Opening.Pots.Keys.Except(household.Pots.Select(pot => pot.Id)).Any())
        {
            throw new ArgumentException("An opening part belongs to no bill or pot.", nameof(household));
        }
    }
}
