using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;

namespace Payday.Core.Drafts;

/// <summary>Makes a household of a draft, or says all that is wrong with it: the one place that decides what a household may be.</summary>
public static class HouseholdCheck
{
    /// <summary>Checks a household that a person gives.</summary>
    /// <returns>The household; or all faults, each a <see cref="DraftFault"/>, in the order in which a household is read.</returns>
    public static Result<Household> Of(HouseholdDraft draft) => Of(draft, takesAnyName: false);

    /// <summary>Checks a household that was stored once: its names are taken as they are, for some were taken once that no longer are.</summary>
    /// <inheritdoc cref="Of(HouseholdDraft)"/>
    public static Result<Household> OfStored(HouseholdDraft draft) => Of(draft, takesAnyName: true);

    private static Result<Household> Of(HouseholdDraft draft, bool takesAnyName)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var check = new DraftCheck(draft.Settings.Currency) { TakesAnyName = takesAnyName };
        Household household = Made(draft, check);
        TotalCheck.Of(household, draft.Opening is not null, check);
        return check.Faults.Count == 0 ? Result.Of(household) : Result.Refused<Household>([.. check.Faults]);
    }

    private static Household Made(HouseholdDraft draft, DraftCheck check)
    {
        DraftPlace nameAt = DraftPlace.Of(HouseholdDraft.Members.Name);
        string name = check.Line(draft.Name, nameAt);
        if (check.IsSound(nameAt) && !check.TakesAnyName && NameRule.Unseen(name, nameAt) is { } unseen)
        {
            check.Refuse(unseen);
        }

        DraftPlace startAt = DraftPlace.Of(HouseholdDraft.Members.Start);
        NodaTime.LocalDate start = check.Date(draft.Start, startAt);
        check.Start = check.IsSound(startAt) ? start : null;
        HouseholdSettings settings = SettingsCheck.Of(draft.Settings, check);
        (Money account, ImmutableSortedDictionary<long, int> notes) = OpeningCheck.Of(draft.Opening, check);

        ItemNames sources = ItemNames.Of(draft.Sources, HouseholdDraft.Members.Sources, "source", check);
        DraftPlace sourcesAt = DraftPlace.Of(HouseholdDraft.Members.Sources);
        if (check.IsThere(draft.Sources, sourcesAt) && draft.Sources is { IsEmpty: true })
        {
            check.Refuse(new DraftFault.NoSource(sourcesAt));
        }

        var madeSources = sources.Make(draft.Sources, (source, id, text, place) => SourceCheck.Of(source, id, text, place, check));
        var bills = ItemNames.Of(draft.Bills, HouseholdDraft.Members.Bills, "bill", check);
        var setAside = new OpeningParts<BillId>();
        var madeBills = bills.Make(draft.Bills, (bill, id, text, place) => BillCheck.Of(bill, id, text, place, check, setAside));
        ItemNames debts = ItemNames.Of(draft.Debts, HouseholdDraft.Members.Debts, "debt", check);
        var madeDebts = debts.Make(draft.Debts, (debt, id, text, place) => DebtCheck.Of(debt, id, text, place, check));
        ItemNames pots = ItemNames.Of(draft.Pots, HouseholdDraft.Members.Pots, "pot", check, arePots: true);
        var held = new OpeningParts<PotId>();
        var potCheck = new PotCheck(check, pots, debts, held, RankCheck.Of(draft.Pots ?? [], check));
        var madePots = pots.Make(draft.Pots, potCheck.Of);
        return new Household(
            name, start, settings, madeSources, madeBills, madeDebts, madePots, new OpeningBalances(account, setAside.All, held.All, notes));
    }
}
