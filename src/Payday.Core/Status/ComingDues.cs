using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Debts;
using Payday.Core.Ids;
using Payday.Core.Routines;

namespace Payday.Core.Status;

/// <summary>What has to leave the account by a date: bills and minimums alike.</summary>
public static class ComingDues
{
    /// <summary>All of a span of dates, paid or not, both ends included.</summary>
    /// <returns>By date; of one day bills first, each in household order.</returns>
    public static ImmutableArray<ComingDue> Between(Book book, LocalDate from, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        BankHolidays holidays = BankHolidays.From(book.Household.Settings.Holidays);
        return
        [
            .. book.Household.Bills.SelectMany(bill => Paid(book, bill, holidays)).Concat(Open(book, holidays, to))
                .Concat(book.Household.Debts.SelectMany(debt => Covered(book, debt).Concat(Ahead(book, debt, holidays, to))))
                .Where(due => due.Date >= from && due.Date <= to)
                .OrderBy(due => due.Date),
        ];
    }

    /// <summary>What is still to leave the account up to a date: what waits since before is among it.</summary>
    /// <returns>In the same order.</returns>
    public static ImmutableArray<ComingDue> Waiting(Book book, LocalDate today, LocalDate to)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. Between(book, book.Household.Start, to).Where(due => !due.Paid && (due.Kind == DueKind.Bill || due.Date >= today || !IsCovered(book, due)))];
    }

    private static IEnumerable<ComingDue> Open(Book book, BankHolidays holidays, LocalDate to)
    {
        Dictionary<BillId, string> names = book.Household.Bills.ToDictionary(bill => bill.Id, bill => bill.Name);
        return OpenDues.OfBills(book, holidays, to)
            .Select(due => new ComingDue(due.Key.Owner, names[due.BillId], due.Date, due.Amount, Paid: false));
    }

    private static IEnumerable<ComingDue> Paid(Book book, Bill bill, BankHolidays holidays) => book.Closed
        .SelectMany(payday => payday.Dues)
        .Where(due => due.Paid && due.Key.Bill == bill.Id)
        .Select(due => new ComingDue(DueOwner.Of(bill.Id), bill.Name, holidays.Shift(due.Key.Scheduled, bill.Shift), due.Amount, Paid: true));

    // The payday has put its money aside for the lender; until the next one it is still to be sent off by its day.
    private static IEnumerable<ComingDue> Covered(Book book, Debt debt) => book.Closed
        .SelectMany(payday => (payday.Minimums ?? [])
            .Where(due => due.Paid && due.Key.Debt == debt.Id)
            .Select(due => new ComingDue(DueOwner.Of(debt.Id), debt.Name, due.Key.Scheduled, due.Amount, Paid: payday != book.LastClosed)));

    private static bool IsCovered(Book book, ComingDue due) =>
        book.LastClosed?.Minimums is { } minimums && minimums.Any(covered => covered.Paid && covered.Key == new DueKey(due.Owner, due.Date));

    private static IEnumerable<ComingDue> Ahead(Book book, Debt debt, BankHolidays holidays, LocalDate to)
    {
        Money balance = book.Ledger.Balances.OwedOn(debt.Id).ClampToZero();
        foreach (OpenMinimum due in OpenDues.OfDebts(book, holidays, to).Where(due => due.Key.Debt == debt.Id).TakeWhile(_ => balance.IsPositive))
        {
            Money interest = due.IsCharged ? Money.Zero(balance.Currency) : balance.MonthOfInterest(debt.YearlyRate);
            Money minimum = debt.Minimum.Due(balance, interest);
            balance += interest - minimum;
            yield return new ComingDue(DueOwner.Of(debt.Id), debt.Name, due.Date, minimum, Paid: false);
        }
    }
}
