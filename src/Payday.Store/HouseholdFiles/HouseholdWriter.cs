using System.Text.Json;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Store.Formats;

namespace Payday.Store.HouseholdFiles;

/// <summary>Writes the outermost object of a household file.</summary>
internal static class HouseholdWriter
{
    /// <summary>Writes a household.</summary>
    public static void Write(Utf8JsonWriter json, Household household)
    {
        RefuseWhatWouldBeLost(household);
        Write(json, HouseholdDraft.Of(household));
    }

    /// <summary>Writes a draft: what of it is there.</summary>
    public static void Write(Utf8JsonWriter json, HouseholdDraft draft)
    {
        json.WriteStartObject();
        json.WriteNumber(HouseholdReader.Version, HouseholdFile.Version);
        HouseholdFormat.Fields.WriteFields(json, draft, draft.Settings.Currency ?? default);
        json.WriteEndObject();
    }

    private static void RefuseWhatWouldBeLost(Household household)
    {
        if (household.Amounts().Any(amount => amount.Currency != household.Currency))
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
