using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;

namespace Payday.Core.Routines;

/// <summary>The dues after a period that money set aside for a bill is for.</summary>
public static class LaterDues
{
    /// <summary>The first of a bill's dues after the period, as many as an amount reaches into; the last may be covered in part.</summary>
    /// <param name="plan">The routine.</param>
    /// <param name="line">What the account holds for the bill.</param>
    /// <param name="amount">What of it is for later dues.</param>
    /// <returns>By date; none where no due is known or nothing is there for one. It looks as far ahead as a plan does.</returns>
    public static ImmutableArray<Due> Of(RoutinePlan plan, SetAsideLine line, Money amount)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(line);
        Bill? bill = plan.Book.Household.Bills.FirstOrDefault(bill => bill.Id == line.BillId);
        if (bill is null || line.NextDue is not { } next)
        {
            return [];
        }

        var dues = ImmutableArray.CreateBuilder<Due>();
        Money left = amount;
        foreach (Due due in BillDues.Between([bill], BankHolidays.From(plan.Book.Household.Settings.Holidays), next, next.PlusMonths(BillDues.MonthsAhead)))
        {
            if (!left.IsPositive)
            {
                break;
            }

            dues.Add(due);
            left -= due.Amount;
        }

        return dues.ToImmutable();
    }
}
