using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Takes out of a draft what was decided about things that the household no longer has.</summary>
/// <remarks>
/// A bill, debt, pot or source can go while a payday is begun. A placement on a debt that is gone would
/// otherwise count as placed and never reach the ledger.
/// </remarks>
public static class DraftFit
{
    /// <summary>The draft with what the household has.</summary>
    public static RoutineDraft To(Household household, RoutineDraft draft)
    {
        ArgumentNullException.ThrowIfNull(household);
        ArgumentNullException.ThrowIfNull(draft);
        HashSet<SourceId> sources = [.. household.Sources.Select(source => source.Id)];
        HashSet<BillId> bills = [.. household.Bills.Select(bill => bill.Id)];
        HashSet<DebtId> debts = [.. household.Debts.Select(debt => debt.Id)];
        HashSet<PotId> pots = [.. household.Pots.Select(pot => pot.Id)];
        return draft with
        {
            Incomes = Of(draft.Incomes, sources),
            Dues = draft.Dues.RemoveRange(draft.Dues.Keys.Where(due => due.Bill is not { } bill || !bills.Contains(bill))),
            DebtPayments = Of(draft.DebtPayments, debts),
            Minimums = draft.Minimums.RemoveRange(draft.Minimums.Keys.Where(due => due.Debt is not { } debt || !debts.Contains(debt))),
            PaidMinimums = draft.PaidMinimums.RemoveRange(draft.PaidMinimums.Keys.Where(due => due.Debt is not { } debt || !debts.Contains(debt))),
            Fills = Of(draft.Fills, pots),
            Notes = draft.Notes.RemoveRange(draft.Notes.Keys.Where(part => !pots.Contains(part.PotId))),
            Placements = draft.Placements is { } placements ? [.. placements.Where(IsKnown)] : null,
        };

        bool IsKnown(Placement placement) => placement.Target switch
        {
            MoveTarget.ToDebt to => debts.Contains(to.Id),
            MoveTarget.ToPot to => pots.Contains(to.Id),
            MoveTarget.ToBill to => bills.Contains(to.Id),
            _ => true,
        };
    }

    private static ImmutableSortedDictionary<TId, Money> Of<TId>(ImmutableSortedDictionary<TId, Money> amounts, HashSet<TId> known)
        where TId : notnull =>
        amounts.RemoveRange(amounts.Keys.Where(id => !known.Contains(id)));
}
