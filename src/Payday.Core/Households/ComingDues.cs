using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Routines;

namespace Payday.Core.Households;

/// <summary>What has to leave the account in a span of dates: bills and minimums alike.</summary>
/// <remarks>What is open is <see cref="OpenDues"/>'s answer; what was paid or covered, the closed paydays wrote down.</remarks>
public static class ComingDues
{
    /// <summary>All of them, paid or not, both ends included.</summary>
    /// <returns>By date; of one day bills first, each in household order.</returns>
    public static ImmutableArray<ComingDue> Between(Book book, LocalDate from, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = BankHolidays.From(book.Household.Settings.Holidays);
        ILookup<string, OpenDue> bills = OpenDues.OfBills(book, holidays, to).ToLookup(due => due.Key.BillId);
        ILookup<string, OpenMinimum> minimums = OpenDues.OfDebts(book, holidays, to).ToLookup(due => due.Key.BillId);
        return
        [
            .. book.Household.Bills.SelectMany(bill => OfBill(book, bill, bills[bill.Id], holidays))
                .Concat(book.Household.Debts.SelectMany(debt => OfDebt(book, debt, minimums[debt.Id])))
                .Where(due => due.Date >= from && due.Date <= to)
                .OrderBy(due => due.Date),
        ];
    }

    private static IEnumerable<ComingDue> OfBill(Book book, Bill bill, IEnumerable<OpenDue> open, BankHolidays holidays) =>
        Settled(book, bill.Id, payday => payday.Dues)
            .Select(due => new ComingDue(DueKind.Bill, bill.Id, bill.Name, holidays.Shift(due.Key.Scheduled, bill.Shift), due.Amount, Paid: true))
            .Concat(open.Select(due => new ComingDue(DueKind.Bill, bill.Id, bill.Name, due.Date, due.Amount, Paid: false)));

    private static IEnumerable<ComingDue> OfDebt(Book book, Debt debt, IEnumerable<OpenMinimum> open)
    {
        foreach (ClosedDue due in Settled(book, debt.Id, payday => payday.Minimums ?? []))
        {
            yield return new ComingDue(DueKind.Minimum, debt.Id, debt.Name, due.Key.Scheduled, due.Amount, Paid: true);
        }

        Money balance = book.Ledger.Balances.OwedOn(debt.Id).ClampToZero();
        foreach (OpenMinimum due in open)
        {
            if (balance.IsZero)
            {
                yield break;
            }

            Money interest = due.IsCharged ? Money.Zero(balance.Currency) : balance.MonthOfInterest(debt.YearlyRate);
            Money minimum = debt.Minimum.Due(balance, interest);
            balance += interest - minimum;
            yield return new ComingDue(DueKind.Minimum, debt.Id, debt.Name, due.Date, minimum, Paid: false);
        }
    }

    private static IEnumerable<ClosedDue> Settled(Book book, string owner, Func<ClosedPayday, ImmutableArray<ClosedDue>> dues) => book.Closed
        .SelectMany(payday => dues(payday))
        .Where(due => due.Paid && due.Key.BillId == owner)
        .DistinctBy(due => due.Key);
}
