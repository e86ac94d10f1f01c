using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Calendar;

namespace Payday.Core.Bills;

/// <summary>What falls due in a span of dates.</summary>
public static class BillDues
{
    /// <summary>How many months ahead a plan looks (design, 5.2).</summary>
    public const int MonthsAhead = 13;

    /// <summary>The dues of bills in a window, both ends included.</summary>
    /// <param name="bills">The bills, in household order.</param>
    /// <param name="holidays">The bank holidays.</param>
    /// <param name="from">The first due date of the window.</param>
    /// <param name="to">The last due date of the window.</param>
    /// <returns>
    /// One for every scheduled date, in order of the moved date, then of the bills. Two that move to one day stay two,
    /// and a bill of zero, whose amount is yet to be confirmed, is among them.
    /// </returns>
    public static ImmutableArray<Due> Between(IEnumerable<Bill> bills, BankHolidays holidays, LocalDate from, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(bills);
        return
        [
            .. bills
                .SelectMany(bill => Occurrences.Between(bill.Schedule, bill.Shift, holidays, from, to, bill.Until)
                    .Select(time => new Due(bill.Id, bill.Name, time.Date, bill.AmountOn(time.Scheduled)) { Scheduled = time.Scheduled }))
                .OrderBy(due => due.Date),
        ];
    }
}
