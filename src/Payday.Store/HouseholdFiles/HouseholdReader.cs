using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Households;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Reads the outermost object of a household file.</summary>
internal static class HouseholdReader
{
    // Where the currency itself is wrong, amounts are still read, with the most decimals any currency has.
    private static readonly Currency MostDecimals = Currency.FromCode("CLF");

    /// <summary>Reads a household that a person gives.</summary>
    public static Household? Read(JsonCursor root) => Read(root, isStored: false);

    /// <summary>Reads a household that is stored, see <see cref="HouseholdParts.IsStored"/>.</summary>
    public static Household? ReadStored(JsonCursor root) => Read(root, isStored: true);

    private static Household? Read(JsonCursor root, bool isStored)
    {
        JsonFields file = root.Fields();
        if (IsOfAnotherVersion(file.Required("version")))
        {
            return null;
        }

        JsonCursor nameField = file.Required("name");
        string name = nameField.OneLine(NamedList.LongestName);
        if (nameField.IsSound && !isStored && NameRule.Unseen(name) is { } unseen)
        {
            nameField.Refuse(unseen);
        }

        JsonCursor startField = file.Required("start");
        LocalDate start = startField.Date();
        JsonCursor currencyField = file.Required("currency");
        Currency currency = ReadCurrency(currencyField);
        HouseholdSettings settings = SettingsFormat.Read(file, currency, currencyField.IsSound);
        var parts = new HouseholdParts(settings.Currency, startField.IsSound ? start : null, settings.Cash.Notes) { IsStored = isStored };

        JsonCursor? opening = file.Optional("opening");
        Money account = OpeningFormat.Read(opening, parts, out Notes notesOnHand);
        ImmutableArray<IncomeSource> sources = SourceFormat.Read(file.Required("sources"), parts);
        ImmutableArray<Bill> bills = BillFormat.Read(file.Optional("bills"), parts);
        ImmutableArray<Debt> debts = DebtFormat.Read(file.Optional("debts"), parts);
        var household = new Household(
            name,
            start,
            settings,
            sources,
            bills,
            debts,
            PotFormat.Read(file.Optional("pots"), parts, debts),
            new OpeningBalances(account, parts.SetAside.ToImmutable(), parts.Held.ToImmutable(), notesOnHand));
        file.RefuseOthers();
        HouseholdTotals.Check(root, opening, household);
        return household;
    }

    private static bool IsOfAnotherVersion(JsonCursor version)
    {
        int number = version.Count(1, int.MaxValue);
        if (version.IsSound && number > HouseholdFile.Version)
        {
            version.Refuse($"This file has version {number} and this program reads versions {HouseholdFile.OldestVersion} to {HouseholdFile.Version}; use a newer program.");
            return true;
        }

        return false;
    }

    private static Currency ReadCurrency(JsonCursor field) =>
        Currency.TryFromCode(field.Word(Currency.KnownCodes), out Currency currency) ? currency : MostDecimals;
}
