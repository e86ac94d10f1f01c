using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Core.Drafts;
using Payday.Store.Json;
using Members = Payday.Core.Drafts.DebtDraft.Members;

namespace Payday.Calculators;

/// <summary>The input of the <c>debts</c> calculator.</summary>
/// <param name="Currency">The currency of all amounts.</param>
/// <param name="From">The first month in which interest accrues and payments are made.</param>
/// <param name="Debts">The debts as they stand.</param>
internal sealed record DebtsFile(Currency Currency, YearMonth From, ImmutableArray<DebtState> Debts)
{
    /// <summary>Reads it.</summary>
    public static DebtsFile Read(JsonCursor file) => CalculatorFile.Read(file, DebtsDraft.Fields, draft => draft.Currency, Of);

    private static DebtsFile Of(DebtsDraft draft, DraftCheck check)
    {
        check.IsThere(draft.Currency, DraftPlace.Of(DebtsDraft.Members.Currency));
        LocalDate from = check.Date(draft.From, DraftPlace.Of(DebtsDraft.Members.From));
        check.IsThere(draft.Debts, DraftPlace.Of(DebtsDraft.Members.Debts));
        ImmutableArray<DebtState> debts = [.. (draft.Debts ?? []).Select((debt, i) => Of(debt, DraftPlace.Of(DebtsDraft.Members.Debts, i), check))];
        SameNames.Refuse(debts, debt => debt.Name, DebtsDraft.Members.Debts, areDebts: true, check);
        return new DebtsFile(check.Currency, from.ToYearMonth(), debts);
    }

    private static DebtState Of(DebtDraft debt, DraftPlace place, DraftCheck check)
    {
        string name = check.Line(debt.Name, place.Then(ItemMembers.Name));
        return new DebtState(
            new(name),
            name,
            check.Amount(debt.Balance, place.Then(Members.Balance)),
            check.Rate(debt.Rate, HouseholdLimits.HighestRate, place.Then(Members.Rate)),
            MinimumCheck.Of(debt.Minimum, place.Then(Members.Minimum), check));
    }
}
