using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ids;

namespace Payday.Core.Drafts;

/// <summary>Makes a debt of a draft.</summary>
internal static class DebtCheck
{
    public static Debt Of(DebtDraft debt, string id, string name, DraftPlace place, DraftCheck check)
    {
        DraftPlace dueAt = place.Then(DebtDraft.Members.Due);
        return new(
            new DebtId(id),
            name,
            check.Amount(debt.Balance, place.Then(DebtDraft.Members.Balance)),
            check.Rate(debt.Rate, HouseholdLimits.HighestRate, place.Then(DebtDraft.Members.Rate)),
            MinimumCheck.Of(debt.Minimum, place.Then(DebtDraft.Members.Minimum), check),
            debt.Schedule is not null
                ? ScheduleCheck.Of(debt.Schedule, place.Then(DebtDraft.Members.Schedule), check)
                : new Schedule.Monthly(check.IsThere(debt.Due, dueAt) ? debt.Due! : new MonthDay.Last()));
    }
}
